"""What is printed: a small PDF writer and the papers made with it. Imported only when a paper is wanted."""
