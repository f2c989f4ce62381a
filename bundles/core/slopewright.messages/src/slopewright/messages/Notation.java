package slopewright.messages;

/** How a number is written. Lengths are metres, angles decimal degrees unless the notation says otherwise. */
public enum Notation {
    /** Metres to the centimetre, to the decimetre from a kilometre on and whole from ten: {@code 12.34 m}. */
    METRES("m"),
    /** As metres, and what decides: never rounded to nothing, however small it is: {@code 0.004 m}. */
    MARGIN("m"),
    /** Metres to the decimetre: {@code 12.3 m}. */
    DECIMETRES("m"),
    /** Metres to the millimetre: {@code 12.345 m}. */
    MILLIMETRES("m"),
    /** Whole metres: {@code 12 m}. */
    WHOLE_METRES("m"),
    /** Metres with feet beside them: {@code 12.34 m (40.5 ft)}. */
    METRES_AND_FEET("m"),
    /** Metres, written as kilometres: {@code 7.50 km}. */
    KILOMETRES("m"),
    /** Decimal degrees, written in degrees and minutes: {@code 2°50'}. */
    DEGREES_MINUTES("deg"),
    /** Decimal degrees to the hundredth: {@code 0.57°}. */
    DEGREES("deg"),
    /** Decimal degrees without decimals that say nothing: {@code 15°}. */
    WHOLE_DEGREES("deg"),
    /** A bearing in whole degrees, in three digits: {@code 020°}. */
    BEARING("deg"),
    /** Minutes of arc to the tenth: {@code 2.0'}. */
    MINUTES("min"),
    /** Per cent to the hundredth. */
    PERCENT("%"),
    /** A whole number. */
    COUNT(""),
    /** A number to the hundredth, without decimals where it has none. */
    NUMBER(""),
    /** A number of no unit with every digit that it has. */
    EXACT(""),
    /** A number to the thousandth, such as a coordinate of colour. */
    THOUSANDTHS(""),
    /** Candela. */
    CANDELA("cd"),
    /** Volts. */
    VOLTS("V"),
    /** Knots. */
    KNOTS("kt"),
    /** Feet a minute. */
    FEET_PER_MINUTE("ft/min"),
    /** Hertz. */
    HERTZ("Hz"),
    /** Seconds. */
    SECONDS("s"),
    /** Hours. */
    HOURS("h"),
    /** A decimal year to the tenth: {@code 2025.0}. */
    YEAR(""),
    /** Watts. */
    WATTS("W");

    /** What a length of the model can hold, metres. */
    private static final double MODEL_M = 0.001;
    /** What an angle of the model can hold, decimal degrees. */
    private static final double MODEL_DEG = 1e-6;

    private final String unit;

    Notation(String unit) {
        this.unit = unit;
    }

    /** Returns how near two numbers count as equal, in the unit: what a model can hold of lengths and angles. */
    double same() {
        return switch (unit) {
            case "m" -> MODEL_M;
            case "deg" -> MODEL_DEG;
            case "min" -> MODEL_DEG * 60;
            default -> 0;
        };
    }

    /** Returns the unit of the number that it takes; empty where there is none. */
    public String unit() {
        return unit;
    }
}
