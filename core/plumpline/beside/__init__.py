"""The same job planned in several ways, side by side: what each takes, what it costs, and why."""
