"""What was seen, decided and changed at a building: entries, their chain, the site they make."""
