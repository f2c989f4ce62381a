package slopewright.report.internal.html;

import slopewright.messages.Words;

/** Writes latitudes and longitudes in degrees, minutes and seconds, the form in which they are published. */
public final class Coordinates {

    private static final int SECONDS_A_DEGREE = 3600;
    private static final int SECONDS_A_MINUTE = 60;
    private static final int THOUSANDTHS = 1000;

    private Coordinates() {
    }

    /** Returns a latitude to a thousandth of a second, some 3 cm on the ground; decimal degrees, north positive. */
    public static String latitude(ReportWords words, double degrees) {
        return written(words, degrees, degrees < 0 ? "south" : "north");
    }

    /** Returns a longitude to a thousandth of a second; decimal degrees, east positive. */
    public static String longitude(ReportWords words, double degrees) {
        return written(words, degrees, degrees < 0 ? "west" : "east");
    }

    /** Rounds once, to whole thousandths, so that no sixty seconds or minutes can stand in print. */
    private static String written(ReportWords words, double degrees, String hemisphere) {
        long thousandths = Math.round(Math.abs(degrees) * SECONDS_A_DEGREE * THOUSANDTHS);
        long minutes = thousandths / (SECONDS_A_MINUTE * THOUSANDTHS);
        double seconds = (thousandths - minutes * SECONDS_A_MINUTE * THOUSANDTHS) / (double) THOUSANDTHS;
        String text = words.fixed(seconds, 3);
        return words.say("degrees-minutes-seconds", Words.name(String.valueOf(minutes / SECONDS_A_MINUTE)),
                Words.name(two(String.valueOf(minutes % SECONDS_A_MINUTE))), Words.name(seconds < 10 ? "0" + text : text),
                Words.name(words.term("hemisphere." + hemisphere)));
    }

    private static String two(String digits) {
        return digits.length() < 2 ? "0" + digits : digits;
    }
}
