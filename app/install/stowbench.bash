# bash completion of stowbench; tests/outside/installed_test.py holds it against `stowbench --help`.
complete -o default -W "demo take-in plan papers weigh hand-over supplies records sizes paper-box fit price verify \
backup tables restore forget --book --json --help --version" stowbench
