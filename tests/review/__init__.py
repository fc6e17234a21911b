"""What a sceptical engineer tried from outside."""
