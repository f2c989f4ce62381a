package slopewright.checks;

import java.util.ArrayList;
import java.util.List;

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;

/** Cases of what the places of an obstacle make, each limit met and just missed. */
final class ObstacleShapeCases {

    private ObstacleShapeCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        lines(cases);
        areas(cases);
        geographic(cases);
        return cases;
    }

    private static RuleCase shape(Result expected, String name, ObstacleKind kind, double... alongAndRight) {
        return RuleCase.of("DATA-50", expected, name, Bases::row, sample -> {
            Obstacle obstacle = sample.obstacle("wood", alongAndRight[0], alongAndRight[1], 110);
            obstacle.setKind(kind);
            for (int i = 2; i < alongAndRight.length; i += 2) {
                obstacle.getPlaces().add(Sample.place(alongAndRight[i], alongAndRight[i + 1], 110));
            }
        });
    }

    /** A line comes back where its ends are nearer than half of the way along it. */
    private static void lines(List<RuleCase> cases) {
        cases.add(shape(Result.PASS, "75 m out and 25 m back: half of the way", ObstacleKind.LINE, -900, 0, -825, 0, -850, 0));
        cases.add(shape(Result.FAIL, "75 m out and 25.5 m back", ObstacleKind.LINE, -900, 0, -825, 0, -850.5, 0));
        cases.add(shape(Result.FAIL, "a bow to the right", ObstacleKind.LINE, -900, 0, -900, 75, -900, 20));
        cases.add(shape(Result.PASS, "a wire between two masts", ObstacleKind.LINE, -900, 0, -800, 75));
        cases.add(shape(Result.FAIL, "30.001 km in two legs", ObstacleKind.LINE, -30_901, 0, -15_900, 0, -900, 0));
        cases.add(shape(Result.PASS, "30 km in two legs", ObstacleKind.LINE, -30_900, 0, -15_900, 0, -900, 0));
    }

    /** A triangle over 100 m has the area of a hundredth of their square, 100 m2, where it is 2 m high. */
    private static void areas(List<RuleCase> cases) {
        cases.add(shape(Result.PASS, "a triangle 2 m high over 100 m", ObstacleKind.AREA, -900, 200, -850, 202, -800, 200));
        cases.add(shape(Result.FAIL, "a triangle 1.99 m high over 100 m", ObstacleKind.AREA, -900, 200, -850, 201.99, -800, 200));
        cases.add(shape(Result.PASS, "the same triangle the other way round", ObstacleKind.AREA, -800, 200, -850, 202, -900, 200));
        cases.add(shape(Result.FAIL, "1.99 m high, the other way round", ObstacleKind.AREA, -800, 200, -850, 201.99, -900, 200));
        cases.add(shape(Result.PASS, "a strip of 1.01 m by 100 m", ObstacleKind.AREA, -900, 200, -900, 201.01, -800, 201.01, -800, 200));
        cases.add(shape(Result.FAIL, "a strip of 0.99 m by 100 m", ObstacleKind.AREA, -900, 200, -900, 200.99, -800, 200.99, -800, 200));
        cases.add(shape(Result.PASS, "a square that names its first corner again", ObstacleKind.AREA, -900, 200, -900, 300, -800, 300,
                -800, 200, -900, 200));
        cases.add(shape(Result.PASS, "a triangle that names its first corner again", ObstacleKind.AREA, -900, 200, -900, 300, -800, 300,
                -900, 200));
        cases.add(shape(Result.FAIL, "there and back", ObstacleKind.AREA, -900, 200, -800, 300, -900, 200));
        cases.add(shape(Result.FAIL, "three places on a line", ObstacleKind.AREA, -900, 200, -850, 250, -800, 300));
        cases.add(shape(Result.PASS, "a bay that comes near to the other side", ObstacleKind.AREA, -900, 200, -900, 300, -850, 201, -800,
                300, -800, 200));
        cases.add(shape(Result.FAIL, "a bay that reaches through the other side", ObstacleKind.AREA, -900, 200, -900, 300, -850, 199, -800,
                300, -800, 200));
        cases.add(shape(Result.PASS, "a bay that touches the last side", ObstacleKind.AREA, -900, 200, -900, 300, -850, 200, -800, 300,
                -800, 200));
        cases.add(shape(Result.PASS, "a bay that touches the first side", ObstacleKind.AREA, -800, 200, -900, 200, -900, 300, -850, 200,
                -800, 300));
        cases.add(shape(Result.PASS, "a bay that touches the first side, the other way round", ObstacleKind.AREA, -900, 200, -800, 200,
                -800, 300, -850, 200, -900, 300));
        cases.add(shape(Result.PASS, "a bay that touches the last side, the other way round", ObstacleKind.AREA, -800, 200, -800, 300,
                -850, 200, -900, 300, -900, 200));
        cases.add(shape(Result.FAIL, "two places as an area", ObstacleKind.AREA, -900, 200, -800, 200));
        cases.add(shape(Result.FAIL, "the first side crosses the third", ObstacleKind.AREA, -900, 200, -800, 300, -750, 200, -900, 290));
        cases.add(shape(Result.FAIL, "the second side crosses the last of five", ObstacleKind.AREA, -900, 200, -800, 200, -800, 300, -700,
                300, -700, 250));
        cases.add(shape(Result.PASS, "five corners", ObstacleKind.AREA, -900, 200, -800, 200, -750, 250, -800, 300, -900, 300));
    }

    /** Along a parallel a degree is shorter by the cosine of the latitude; one along a meridian is about 111 km everywhere. */
    private static void geographic(List<RuleCase> cases) {
        // On WGS 84 a degree of longitude is 55.80 km at 60 degrees and one of latitude 111.41 km.
        cases.add(geographic(Result.PASS, "29.6 km along the parallel of 60 degrees", ObstacleKind.LINE, 60, 10, 60, 10.53));
        cases.add(geographic(Result.FAIL, "30.4 km along the parallel of 60 degrees", ObstacleKind.LINE, 60, 10, 60, 10.545));
        cases.add(geographic(Result.PASS, "29.9 km along a meridian", ObstacleKind.LINE, 60, 10, 60.2686, 10));
        cases.add(geographic(Result.FAIL, "30.08 km along a meridian", ObstacleKind.LINE, 60, 10, 60.27, 10));
        cases.add(geographic(Result.PASS, "across the meridian of 90 degrees", ObstacleKind.LINE, 10, 89.9995, 10, 90.0005));
        cases.add(geographic(Result.PASS, "across the meridian of 180 degrees", ObstacleKind.LINE, -17, 179.9995, -17, -179.9995));
        cases.add(geographic(Result.PASS, "back across the meridian of 180 degrees", ObstacleKind.LINE, -17, -179.9995, -17, 179.9995));
        cases.add(geographic(Result.PASS, "a square across the meridian of 180 degrees", ObstacleKind.AREA, -17, 179.9995, -17, -179.9995,
                -17.001, -179.9995, -17.001, 179.9995));
        cases.add(geographic(Result.FAIL, "two corners exchanged across the meridian of 180 degrees", ObstacleKind.AREA, -17, 179.9995,
                -17.001, -179.9995, -17, -179.9995, -17.001, 179.9995));
        cases.add(RuleCase.of("DATA-50", Result.PASS, "a place that lacks a coordinate is named elsewhere", Bases::row, sample -> {
            Obstacle obstacle = sample.obstacle("wood", -900, 200, 110);
            obstacle.setKind(ObstacleKind.AREA);
            obstacle.getPlaces().add(Sample.place(-850, 201, 110));
            obstacle.getPlaces().add(Sample.place(-800, 200, 110));
            obstacle.getPlaces().get(0).setEastM(null);
        }));
    }

    private static RuleCase geographic(Result expected, String name, ObstacleKind kind, double... latitudeAndLongitude) {
        return RuleCase.of("DATA-50", expected, name, Bases::row, sample -> {
            Obstacle obstacle = sample.obstacle("wood", 0, 0, 110);
            obstacle.setKind(kind);
            obstacle.getPlaces().clear();
            for (int i = 0; i < latitudeAndLongitude.length; i += 2) {
                Place place = SlopewrightFactory.eINSTANCE.createPlace();
                place.setLatitudeDeg(latitudeAndLongitude[i]);
                place.setLongitudeDeg(latitudeAndLongitude[i + 1]);
                obstacle.getPlaces().add(place);
            }
        });
    }
}
