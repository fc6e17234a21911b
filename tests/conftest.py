"""What all tests share: no example of a property test fails for being slow on a busy machine."""

from hypothesis import settings

settings.register_profile("steady", deadline=None, print_blob=True)
settings.load_profile("steady")
