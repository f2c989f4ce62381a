package slopewright.drawing.pilot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.FramePoint;

/**
 * What of the terrain rises above the horizon of level land in a pilot's view, as models of it have it. Where no model lies the horizon
 * stays that of level land, and nothing is said of what stands there.
 *
 * @param hills outlines in the picture, each from the horizon up and back to it; degrees as in {@link PilotPicture#place}
 */
public record Skyline(List<List<ScenePoint>> hills) {

    private static final int COLUMNS = 480;

    /** Copies the lists. */
    public Skyline {
        hills = hills.stream().map(List::copyOf).toList();
    }

    /**
     * Looks at the terrain.
     *
     * @param picture the picture
     * @param terrain models of the terrain in its frame
     * @param halfDeg half the width of the picture, degrees
     * @param most    so many points of a model are looked at, at most; of more every so many-th
     */
    public static Skyline of(PilotPicture picture, List<TerrainField> terrain, double halfDeg, int most) {
        double[] tops = new double[COLUMNS];
        double horizon = picture.horizonDeg();
        Arrays.fill(tops, horizon);
        for (TerrainField model : terrain) {
            int step = Math.max(1, (model.count() + most - 1) / most);
            for (int i = 0; i < model.count(); i += step) {
                take(picture, model.point(i), model.reachM() * Math.sqrt(step), halfDeg, tops);
            }
        }
        return new Skyline(hills(tops, halfDeg, horizon));
    }

    /** A cell is as wide as it reaches. */
    private static void take(PilotPicture picture, FramePoint place, double reachM, double halfDeg, double[] tops) {
        Optional<ScenePoint> at = picture.place(place);
        if (at.isEmpty() || Math.abs(at.get().x()) > 2 * halfDeg) {
            return;
        }
        double wide = Math.toDegrees(reachM / picture.depthM(place));
        int last = column(at.get().x() + wide, halfDeg);
        for (int i = column(at.get().x() - wide, halfDeg); i <= last; i++) {
            tops[i] = Math.max(tops[i], at.get().y());
        }
    }

    private static int column(double xDeg, double halfDeg) {
        return (int) Math.max(0, Math.min(COLUMNS - 1.0, Math.floor((xDeg / halfDeg + 1) / 2 * COLUMNS)));
    }

    private static List<List<ScenePoint>> hills(double[] tops, double halfDeg, double horizon) {
        List<List<ScenePoint>> hills = new ArrayList<>();
        double wide = 2 * halfDeg / COLUMNS;
        for (int first = 0; first < COLUMNS; first++) {
            int end = first;
            while (end < COLUMNS && tops[end] > horizon) {
                end++;
            }
            if (end > first) {
                List<ScenePoint> hill = new ArrayList<>(List.of(new ScenePoint(first * wide - halfDeg, horizon)));
                for (int i = first; i < end; i++) {
                    hill.add(new ScenePoint((i + 0.5) * wide - halfDeg, tops[i]));
                }
                hill.add(new ScenePoint(end * wide - halfDeg, horizon));
                hills.add(hill);
                first = end;
            }
        }
        return hills;
    }
}
