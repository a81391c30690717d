"""What is to be minded: allergens and cautions."""
