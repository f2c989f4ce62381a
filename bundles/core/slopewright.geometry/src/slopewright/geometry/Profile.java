package slopewright.geometry;

import java.util.Arrays;
import java.util.Optional;

/** A measured height profile: points joined by straight lines, strictly ordered along one axis. Immutable. */
public final class Profile {

    /**
     * Where a rising line passes a profile.
     *
     * @param alongM the place, metres along the axis
     * @param piece  number of the straight piece of the profile on which it lies, from 1
     */
    public record Crossing(double alongM, int piece) {
    }

    private final double[] alongM;
    private final double[] heightM;

    private Profile(double[] alongM, double[] heightM) {
        this.alongM = alongM;
        this.heightM = heightM;
    }

    /**
     * Makes a profile.
     *
     * @param alongM  places along the axis in metres, strictly increasing, at least two
     * @param heightM heights at these places in metres, as many
     * @return the profile
     * @throws IllegalArgumentException where the places do not increase, the counts differ or a number is not finite
     */
    public static Profile of(double[] alongM, double[] heightM) {
        if (alongM.length != heightM.length || alongM.length < 2) {
            throw new IllegalArgumentException("a profile needs at least two points, each with a place and a height");
        }
        for (int i = 0; i < alongM.length; i++) {
            if (!Double.isFinite(alongM[i]) || !Double.isFinite(heightM[i])) {
                throw new IllegalArgumentException("point " + (i + 1) + " of the profile is not a finite number");
            }
            if (i > 0 && alongM[i] <= alongM[i - 1]) {
                throw new IllegalArgumentException("point " + (i + 1) + " of the profile does not lie beyond point " + i);
            }
        }
        return new Profile(Arrays.stream(alongM).map(Profile::withoutSignOfZero).toArray(), heightM.clone());
    }

    /** A search tells 0 from -0, which lies below it. */
    private static double withoutSignOfZero(double placeM) {
        return placeM + 0.0;
    }

    /** Returns the number of points. */
    public int size() {
        return alongM.length;
    }

    /** Returns the place of a point, metres. */
    public double alongM(int index) {
        return alongM[index];
    }

    /** Returns the height of a point, metres. */
    public double heightM(int index) {
        return heightM[index];
    }

    /** Returns the first place, metres. */
    public double firstM() {
        return alongM[0];
    }

    /** Returns the last place, metres. */
    public double lastM() {
        return alongM[alongM.length - 1];
    }

    /** Returns whether a place lies between the first and the last point. */
    public boolean covers(double placeM) {
        return placeM >= firstM() && placeM <= lastM();
    }

    /**
     * Returns the height at a place, interpolated between the neighbouring points.
     *
     * @param placeM metres along the axis
     * @return metres
     * @throws IllegalArgumentException where the profile does not reach the place
     */
    public double heightAt(double placeM) {
        if (!covers(placeM)) {
            throw new IllegalArgumentException(
                    "the profile reaches from " + firstM() + " m to " + lastM() + " m, not to " + placeM + " m");
        }
        int found = Arrays.binarySearch(alongM, withoutSignOfZero(placeM));
        if (found >= 0) {
            return heightM[found];
        }
        int upper = -found - 1;
        double share = (placeM - alongM[upper - 1]) / (alongM[upper] - alongM[upper - 1]);
        return heightM[upper - 1] + share * (heightM[upper] - heightM[upper - 1]);
    }

    /**
     * Finds the first place where what a line rises along the axis and the height of the profile together reach a level:
     * {@code place * rise + height = level}. Every straight piece is solved exactly.
     *
     * @param levelM the level, metres
     * @param rise   rise of the line, metres a metre along the axis
     * @return the first place at which the level is reached from below, empty where there is none
     */
    public Optional<Crossing> firstCrossing(double levelM, double rise) {
        for (int i = 1; i < alongM.length; i++) {
            double before = alongM[i - 1] * rise + heightM[i - 1] - levelM;
            double after = alongM[i] * rise + heightM[i] - levelM;
            if (before <= 0 && after >= 0) {
                double share = before == after ? 0 : before / (before - after);
                return Optional.of(new Crossing(alongM[i - 1] + share * (alongM[i] - alongM[i - 1]), i));
            }
        }
        return Optional.empty();
    }

    /** Returns the profile with every height raised by the same amount, metres. */
    public Profile raised(double byM) {
        double[] heights = heightM.clone();
        for (int i = 0; i < heights.length; i++) {
            heights[i] += byM;
        }
        return new Profile(alongM, heights);
    }
}
