"""What is made here: syrups, juices and infusions, and one serve made many."""
