"""Exact factors to SI for the units that published tables are printed in, and what water, air and steel weigh."""

FOOT = 0.3048  # m, exact
INCH = 0.0254  # m, exact
MILLIMETRE = 0.001  # m
KNOT = 1852.0 / 3600.0  # m/s, exact
POUND = 0.45359237  # kg, exact
GRAVITY = 9.80665  # m/s², exact (standard)
POUND_FORCE = POUND * GRAVITY  # N, exact
KILOGRAM_FORCE = GRAVITY  # N, exact
SHORT_TON_FORCE = 2000.0 * POUND_FORCE  # N, exact
HORSEPOWER = 550.0 * FOOT * POUND_FORCE  # W, exact (mechanical)

AIR_DENSITY = 1.225  # kg/m³, standard atmosphere at 15 °C; at 0 °C it is 5 % more
SEA_WATER_DENSITY = 1025.0  # kg/m³, general tables
STEEL_DENSITY = 7850.0  # kg/m³, general tables
SEA_WATER_VISCOSITY = 1.19e-6  # m²/s at 15 °C, general tables, from memory
