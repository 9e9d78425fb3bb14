# Runs the lay-plan engine on a file of instances: python -m plumpline.layout INSTANCES.json
"""The command of the engine on its own."""

import sys

from plumpline.layout.instances import main

if __name__ == "__main__":
    sys.exit(main())
