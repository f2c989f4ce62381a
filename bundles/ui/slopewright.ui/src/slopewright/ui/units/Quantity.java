package slopewright.ui.units;

/** What kind of number an attribute holds, told by the end of its name. The model always holds the first unit named here. */
public enum Quantity {

    /** Metres. */
    LENGTH("M", "m", 3),
    /** Decimal degrees. */
    ANGLE("Deg", "°", 6),
    /** Decimal degrees of latitude, north positive, never shown in minutes. */
    LATITUDE("Deg", "°", 9),
    /** Decimal degrees of longitude, east positive, never shown in minutes. */
    LONGITUDE("Deg", "°", 9),
    /** Minutes of arc. */
    MINUTES("Minutes", "′", 2),
    /** Per cent. */
    PERCENT("Percent", "%", 3),
    /** Knots. */
    KNOTS("Kt", "kt", 1),
    /** Feet a minute. */
    DESCENT("Ftmin", "ft/min", 1),
    /** Candela. */
    INTENSITY("Cd", "cd", 0),
    /** Watts. */
    POWER("W", "W", 1),
    /** Volts. */
    VOLTAGE("V", "V", 2),
    /** Amperes. */
    CURRENT("A", "A", 2),
    /** Ampere-hours. */
    CHARGE("Ah", "Ah", 1),
    /** Kilograms. */
    MASS("Kg", "kg", 2),
    /** Hertz. */
    FREQUENCY("Hz", "Hz", 2),
    /** Seconds. */
    TIME("S", "s", 1),
    /** Hours. */
    HOURS("H", "h", 2),
    /** Kilovolt-amperes. */
    APPARENT_POWER("Kva", "kVA", 2),
    /** Ohms a kilometre. */
    RESISTANCE("OhmPerKm", "Ω/km", 3),
    /** Columns or rows of a picture. */
    PIXELS("Px", "px", 1),
    /** A number without unit. */
    NUMBER("", "", 3);

    private final String suffix;
    private final String unit;
    private final int decimals;

    Quantity(String suffix, String unit, int decimals) {
        this.suffix = suffix;
        this.unit = unit;
        this.decimals = decimals;
    }

    /** Returns the end of the name of an attribute that holds it. */
    public String suffix() {
        return suffix;
    }

    /** Returns the unit in the model, as people write it. */
    public String unit() {
        return unit;
    }

    /** Returns how many decimals are shown at most. */
    public int decimals() {
        return decimals;
    }

    /** Returns whether it is a latitude or a longitude. */
    public boolean isCoordinate() {
        return this == LATITUDE || this == LONGITUDE;
    }

    /**
     * Returns what an attribute holds.
     *
     * @param attribute name of the attribute
     */
    public static Quantity of(String attribute) {
        if (attribute.equals("latitudeDeg") || attribute.equals("longitudeDeg")) {
            return attribute.equals("latitudeDeg") ? LATITUDE : LONGITUDE;
        }
        for (Quantity quantity : values()) {
            int at = attribute.length() - quantity.suffix.length();
            if (quantity != NUMBER && at > 0 && attribute.endsWith(quantity.suffix) && Character.isLowerCase(attribute.charAt(at - 1))) {
                return quantity;
            }
        }
        return NUMBER;
    }
}
