"""A spec under watch: built again as it is saved, and shown."""
