"""backspan: may this temporary suspended scaffold carry people, and the record that shows why."""
