package slopewright.witness;

/** A rule text in one edition. An edition may stand on an older one for whatever it does not restate. */
public enum Edition {
    /** Annex 14 Vol I 5th ed. and Vol II 3rd ed., as read in national transpositions. */
    ICAO_5TH("icao:5th", null),
    /** Annex 14 Vol I 9th ed. (2022) and Vol II 4th ed.; inherits the 5th where it is not restated. */
    ICAO_9TH("icao:9th", ICAO_5TH),
    /** CS-ADR-DSN; rows only, inherits the older ICAO numbers where none was read. */
    EASA("easa", ICAO_5TH),
    /** Australia; T forms and, from memory, rows as ICAO. */
    CASA("casa", ICAO_5TH),
    /** US orders and circulars, 2010 set. */
    FAA_2010("faa:2010", null),
    /** US order of 2022, as quoted; inherits the 2010 set. */
    FAA_2022("faa:2022", FAA_2010);

    private final String key;
    private final Edition parent;

    Edition(String key, Edition parent) {
        this.key = key;
        this.parent = parent;
    }

    /** The written key, for example {@code icao:9th}. */
    public String key() {
        return key;
    }

    /** The edition that holds what this one does not restate, or null. */
    public Edition parent() {
        return parent;
    }

    /** Whether this is one of the United States texts. */
    public boolean american() {
        return this == FAA_2010 || this == FAA_2022;
    }

    /** Whether the surface starts at D1 + 30 m or + 60 m from the indicator (icao:9th Table 5-3, easa Table M-2). */
    public boolean surfaceFromIndicator() {
        return this == ICAO_9TH || this == EASA;
    }

    /** The edition of a written key. */
    public static Edition of(String key) {
        for (Edition edition : values()) {
            if (edition.key.equals(key)) {
                return edition;
            }
        }
        throw new IllegalArgumentException("no edition " + key);
    }

    /** Whether the texts read under this edition describe the family at all. */
    public boolean covers(Family family) {
        return switch (family) {
            case FOUR_UNIT_ROW, TWO_UNIT_ROW -> true;
            case T_FORM, T_FORM_ABBREVIATED -> this == ICAO_5TH || this == ICAO_9TH || this == CASA;
            case HELIPORT_SECTOR -> this != EASA && this != CASA;
            default -> american();
        };
    }
}
