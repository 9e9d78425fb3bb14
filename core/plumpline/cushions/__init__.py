"""The kinds of cushion: one file each that turns an entry of the job into pieces, and the rules they share."""
