"""The error and the warnings of the package."""


class Error(ValueError):
    """Wrong input. The message names the argument, its value with unit, the allowed range and what to do."""

    def __init__(self, message, argument=""):
        super().__init__(message)
        self.argument = argument
        """Name of the argument at fault; "" where no single one is."""


class DomainWarning(RuntimeWarning):
    """Some rows of an array lie where a formula has no meaning; their result is NaN."""


class ValidityWarning(RuntimeWarning):
    """An input lies outside the range that the source of a formula states; treat the result with care."""


for _type in (Error, DomainWarning, ValidityWarning):
    _type.__module__ = "tauten"
