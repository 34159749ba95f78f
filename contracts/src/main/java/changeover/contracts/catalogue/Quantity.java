package changeover.contracts.catalogue;

/** What a unit measures; a difference of temperatures is not a temperature. */
public enum Quantity {
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    CURRENT,
    VOLTAGE,
    RESISTANCE,
    CAPACITANCE,
    POWER,
    PRESSURE,
    FLOW,
    SHARE,
    LENGTH,
    VOLUME,
    MASS,
    DURATION,
    COUNT
}
