"""Content folders that are wrong on purpose: each is told where, or comes to a safe output."""
