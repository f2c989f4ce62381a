package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachType;
import slopewright.model.Runway;
import slopewright.siting.ElementNames;

/**
 * What the code number of a runway says of its length, width and strip. It is that of the aeroplane reference field length: below 800, 1200
 * and 1800 m for 1 to 3 (Annex 14 Vol I, Table 1-1, from memory). A runway is up to half as long again as its aeroplane needs at its
 * elevation, for which seven in a hundred are added every 300 m (Doc 9157 Part 1, from memory), and no shorter than three quarters of the
 * least; one that is as long and as wide, and has as wide a strip (80 m for 2, 150 m for 3), as the next code number asks is of that. One
 * that is as long and as wide alone, and one that is shorter than the least, is not evaluated until the runway was read back.
 */
final class CodeNumberSizes {
    private static final int LARGE_CODE = 3;
    private static final double[] NARROWEST_M = {18, 23, 30, 45};
    private static final double[] FIELD_LENGTH_BELOW_M = {800, 1200, 1800};
    private static final double[] NEXT_STRIP_M = {80, 150};
    private static final double[] VISUAL_STRIP_M = {60, 80, 110, 150};
    private static final double MOST_TIMES_LONGER = 1.5;
    private static final double LEAST_OF_LENGTH = 0.75;
    private static final double LONGER_A_METRE_UP = 0.07 / 300;
    private static final double LARGE_INSTRUMENT_STRIP_M = 280;
    private static final double SMALL_INSTRUMENT_STRIP_M = 140;

    private final Runway runway;
    private final int code;

    /** Looks at a runway whose code number {@link #isOne is one}. */
    CodeNumberSizes(Runway runway) {
        this.runway = runway;
        code = runway.getCodeNumber();
    }

    /** Returns whether a runway has a code number, and it is one of 1 to 4. */
    static boolean isOne(Runway runway) {
        return runway.getCodeNumber() != null && runway.getCodeNumber() >= 1 && runway.getCodeNumber() <= NARROWEST_M.length;
    }

    /** Returns whether the code number is one of those with the larger sizes. */
    boolean isLarge() {
        return code >= LARGE_CODE;
    }

    /** Returns the narrowest runway, metres: Annex 14 Vol I, 3.1.10. */
    double narrowestM() {
        return NARROWEST_M[code - 1];
    }

    /** Returns whether the strip is as wide as that of an instrument runway: Annex 14 Vol I, 3.4.3, from memory. */
    boolean hasInstrumentStrip() {
        return runway.getStripWidthM() != null && runway.getStripWidthM() >= instrumentStripM();
    }

    /** Returns how wide the strip of an instrument runway is, metres. */
    double instrumentStripM() {
        return isLarge() ? LARGE_INSTRUMENT_STRIP_M : SMALL_INSTRUMENT_STRIP_M;
    }

    /** Returns whether an approach is known to be one by instruments. */
    static boolean isInstrument(ApproachType type) {
        return type != ApproachType.VISUAL && type != ApproachType.NOT_STATED;
    }

    /** Asks where the strip is narrower than the approaches want (for visual ones Annex 14 Vol I, 3.4.5, from memory). */
    void strip(SecondReading reading) {
        boolean instrument = runway.getEnds().stream().anyMatch(end -> isInstrument(end.getApproachType()));
        double least = instrument ? instrumentStripM() : VISUAL_STRIP_M[code - 1];
        if (runway.getStripWidthM() != null && runway.getStripWidthM() < least) {
            reading.ask(runway, Message.of(instrument ? "DATA-54.instrument-strip" : "DATA-54.narrow-strip", ElementNames.of(runway),
                    Words.m(runway.getStripWidthM()), Words.m(least), Words.count(code)));
        }
    }

    /** Compares the code number with the length, the width and the strip, at an elevation in metres. */
    void compare(double elevationM, SecondReading reading, OutcomeCollector outcomes) {
        Double length = runway.getLengthM();
        if (length == null) {
            return;
        }
        double times = 1 + LONGER_A_METRE_UP * elevationM;
        double field = code == 1 ? 0 : FIELD_LENGTH_BELOW_M[code - 2];
        double most = code == NARROWEST_M.length ? Double.MAX_VALUE : FIELD_LENGTH_BELOW_M[code - 1] * times;
        if (length < field * LEAST_OF_LENGTH || length > most * MOST_TIMES_LONGER) {
            outcomes.about(runway).measured(Measure.between(length, field * LEAST_OF_LENGTH, most * MOST_TIMES_LONGER, "m"))
                    .saying(Message.of("DATA-54.code-length", Words.m(length), Words.count(code))).advising("correct").add();
        } else if (length < field) {
            reading.ask(runway, Message.of("DATA-54.short", ElementNames.of(runway), Words.m(length), Words.m(field), Words.count(code)));
        } else if (runway.getWidthM() != null && length >= most && runway.getWidthM() >= NARROWEST_M[code]) {
            next(length, reading, outcomes);
        } else {
            outcomes.about(runway).met(true).saying(Message.of("DATA-54.code", Words.count(code), Words.m(length))).add();
        }
    }

    private void next(double length, SecondReading reading, OutcomeCollector outcomes) {
        Double strip = runway.getStripWidthM();
        if (code <= NEXT_STRIP_M.length && strip != null && strip >= NEXT_STRIP_M[code - 1]) {
            outcomes.about(runway).met(false).saying(Message.of("DATA-54.next-code", Words.count(code), Words.m(length),
                    Words.m(runway.getWidthM()), Words.m(strip), Words.count(code + 1))).advising("correct").add();
        } else {
            reading.ask(runway, Message.of("DATA-54.long", ElementNames.of(runway), Words.m(length), Words.m(runway.getWidthM()),
                    Words.count(code), Words.count(code + 1)));
        }
    }
}
