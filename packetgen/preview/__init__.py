"""A look at the site while its author works on it: served to this computer alone, never written."""
