package slopewright.exchange.internal.survey;

import java.util.Map;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * What the keys of a GeoTIFF (OGC 19-008r4), or of a LAS file that has the same, say of the coordinate reference, held against what is said
 * of the import.
 *
 * @param keys the values by the keys, those alone that are small whole numbers
 */
record GeoKeys(Map<Integer, Integer> keys) {

    private static final int RASTER_TYPE = 1025;
    private static final int GEOGRAPHIC = 2048;
    private static final int PROJECTED = 3072;
    private static final int LINEAR_UNIT = 3076;
    private static final int VERTICAL_UNIT = 4099;
    private static final int METRE = 9001;
    private static final int PIXEL_IS_POINT = 2;
    private static final int OWN = 32767;

    GeoKeys {
        keys = Map.copyOf(keys);
    }

    /** Refuses lengths that are no metres. */
    void refuseUnits(SurveyInput input) throws ExchangeException {
        for (int unit : new int[] {LINEAR_UNIT, VERTICAL_UNIT}) {
            if (keys.getOrDefault(unit, METRE) != METRE) {
                throw input.fault(0, Message.said("survey-file.length-unit", keys.get(unit)));
            }
        }
    }

    /** Returns whether they say that coordinates are longitude and latitude. */
    boolean isGeographic() {
        return keys.containsKey(GEOGRAPHIC) && !keys.containsKey(PROJECTED);
    }

    /** Returns whether they name a grid. */
    boolean namesGrid() {
        return keys.getOrDefault(PROJECTED, OWN) != OWN;
    }

    /** Holds what they say against what is said of the import. */
    void refer(SurveyInput input, boolean degrees) throws ExchangeException {
        int geographic = keys.getOrDefault(GEOGRAPHIC, OWN);
        if (degrees && geographic != OWN && !Geographic.isTaken(geographic, input)) {
            throw input.fault(0, Message.said("survey-file.other-degrees", geographic));
        }
        if (!degrees && namesGrid()) {
            input.refer("EPSG:" + keys.get(PROJECTED));
        }
    }

    /** Returns where in a cell of a raster its value stands, in parts of a cell from its corner. */
    double middle() {
        return keys.getOrDefault(RASTER_TYPE, 1) == PIXEL_IS_POINT ? 0 : 0.5;
    }
}
