"""Single questions to the calculation core, declared: what is asked, from what, what comes back."""
