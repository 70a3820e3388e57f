"""Windows, pages and forms. They know services and models only."""
