"""Files in and out: reading and checking project files, writing what was asked for."""
