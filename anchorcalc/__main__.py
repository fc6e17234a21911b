"""`python -m anchorcalc` is the command."""

from anchorcalc.doors.command import main

main()
