"""The project model: site, kit, rigs, people, evidence, basis. Plain frozen data in SI."""
