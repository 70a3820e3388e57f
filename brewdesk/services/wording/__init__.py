"""Every sentence the services hand to people, whole and translatable."""
