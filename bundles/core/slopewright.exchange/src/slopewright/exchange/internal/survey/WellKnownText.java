package slopewright.exchange.internal.survey;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * What a coordinate reference in well-known text (OGC 01-009, clause 7) says: longitude and latitude on WGS 84, or metres of a grid that it
 * names by its number.
 *
 * @param text the text
 */
record WellKnownText(String text) {

    private static final Pattern UNIT = Pattern.compile("(?:LENGTH|ANGLE)?UNIT\\[\"[^\"]*\",\\s*([-+.\\deE]+)");
    private static final Pattern AUTHORITY = Pattern.compile("(?:AUTHORITY|ID)\\[\"EPSG\",\\s*\"?(\\d{4,6})\"?\\]");
    private static final Pattern GRID = Pattern.compile("PROJC(?:S|RS)\\[");
    private static final Pattern DEGREES = Pattern.compile("GEOG(?:CS|CRS)\\[\\s*\"WGS[ _]?(?:19)?84(?: \\(3D\\))?\"");
    private static final Pattern VERTICAL = Pattern.compile("VERT(?:CS|_CS|CRS)\\[\\s*\"([^\"]*)\"");
    private static final double DEGREE = Math.PI / 180;

    /** Returns whether it is longitude and latitude. */
    boolean isGeographic() {
        return !GRID.matcher(text).find();
    }

    /**
     * Refuses every unit but metres and degrees, longitude and latitude of another datum, and heights of another vertical datum.
     *
     * @throws ExchangeException where there is one
     */
    void refuse(SurveyInput input) throws ExchangeException {
        refuseUnits(input);
        if (isGeographic() && !DEGREES.matcher(text).find()) {
            throw input.fault(0, Message.said("survey-file.no-reference", text.substring(0, Math.min(60, text.length()))));
        }
    }

    /**
     * Refuses every unit but metres and degrees, of places and of heights, and heights of another vertical datum than that of the import.
     *
     * @throws ExchangeException where there is one
     */
    void refuseUnits(SurveyInput input) throws ExchangeException {
        for (Matcher unit = UNIT.matcher(text); unit.find();) {
            double size = input.number(unit.group(1), "unit of the coordinate reference", 0);
            if (size != 1 && Math.abs(size - DEGREE) > 1e-9) {
                throw input.fault(0, Message.said("survey-file.reference-unit", unit.group(1)));
            }
        }
        Matcher vertical = VERTICAL.matcher(text);
        if (vertical.find()) {
            input.elevationsIn(vertical.group(1));
        }
    }

    /** Returns the number of the grid, of the form EPSG:32629; empty where it has none. */
    Optional<String> reference() {
        Matcher grid = GRID.matcher(text);
        if (!grid.find()) {
            return Optional.empty();
        }
        int from = grid.start();
        int to = end(from);
        Optional<String> found = Optional.empty();
        for (Matcher authority = AUTHORITY.matcher(text).region(from, to); authority.find();) {
            found = end(authority.start()) == to - 1 ? Optional.of("EPSG:" + authority.group(1)) : found;
        }
        return found;
    }

    /** Returns where the part ends that begins at a place, behind its bracket. */
    private int end(int from) {
        int depth = 0;
        boolean quoted = false;
        for (int i = from; i < text.length(); i++) {
            char each = text.charAt(i);
            quoted ^= each == '"';
            if (!quoted && each == '[') {
                depth++;
            } else if (!quoted && each == ']') {
                depth--;
                if (depth == 0) {
                    return i + 1;
                }
            }
        }
        return text.length();
    }
}
