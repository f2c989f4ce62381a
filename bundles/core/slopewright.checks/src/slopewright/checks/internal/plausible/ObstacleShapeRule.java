package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Words;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.siting.ElementNames;

/**
 * The places of an obstacle make what it is said to be: a point has one; the outline of an area does not cross itself and encloses more
 * than a hundredth of the square of its length (own band: anything thinner is a line); a line does not come back to where it began.
 * None is longer than thirty kilometres (own band).
 * Severity fail: a place with a wrong digit moves the obstacle, and an area that is compared as a line leaves its middle out.
 */
public final class ObstacleShapeRule extends SiteRule {
    private static final double LONGEST_M = 30_000;
    private static final double M_PER_DEG = 111_320;
    private static final double FULL_TURN_DEG = 360;
    private static final double THIN = 0.01;
    private static final double OUTLINE = 0.5;

    /** Made by the service loader. */
    public ObstacleShapeRule() {
        super("DATA-50", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        List<Obstacle> obstacles = project.getAerodrome().getObstacles();
        boolean sound = true;
        for (Obstacle obstacle : obstacles) {
            List<double[]> places = points(obstacle);
            if (places.size() > 1) {
                outcomes.about(obstacle).measured(Measure.atMost(length(places), LONGEST_M, "m"))
                        .saying("length", ElementNames.of(obstacle), Words.m(length(places)), Words.km(LONGEST_M))
                        .advising("correct").add();
            }
            String fault = fault(obstacle);
            if (!fault.isEmpty()) {
                sound = false;
                outcomes.about(obstacle).met(false).saying(fault, ElementNames.of(obstacle), Words.count(obstacle.getPlaces().size()))
                        .advising("correct").add();
            }
        }
        if (sound && !obstacles.isEmpty()) {
            long temporary = obstacles.stream().filter(obstacle -> Boolean.TRUE.equals(obstacle.getTemporary())).count();
            outcomes.about(project.getAerodrome()).met(true)
                    .saying("sound", Words.count(obstacles.size()), Words.count(temporary)).add();
        }
    }

    private static String fault(Obstacle obstacle) {
        if (obstacle.getKind() == ObstacleKind.POINT) {
            return obstacle.getPlaces().size() > 1 ? "many" : "";
        }
        List<double[]> points = points(obstacle);
        if (points.size() != obstacle.getPlaces().size()) {
            return "";
        }
        if (obstacle.getKind() == ObstacleKind.LINE) {
            return !points.isEmpty() && apart(points.get(0), points.get(points.size() - 1)) < OUTLINE * length(points) ? "closed" : "";
        }
        if (crosses(points)) {
            return "crossing";
        }
        double length = 0;
        for (double[] from : points) {
            for (double[] to : points) {
                length = Math.max(length, apart(from, to));
            }
        }
        return points.size() > 1 && area(points) < THIN * length * length ? "thin" : "";
    }

    /** The places on a plane, metres, to a hundredth of their distances; the meridian of 180 degrees may run between them. */
    private static List<double[]> points(Obstacle obstacle) {
        List<double[]> points = new ArrayList<>();
        Optional<Place> first = obstacle.getPlaces().stream().filter(ObstacleShapeRule::isGeographic).findFirst();
        for (Place place : obstacle.getPlaces()) {
            if (isGeographic(place)) {
                double shrink = Math.cos(Math.toRadians(first.orElseThrow().getLatitudeDeg()));
                double turn = Math.IEEEremainder(place.getLongitudeDeg() - first.orElseThrow().getLongitudeDeg(), FULL_TURN_DEG);
                points.add(new double[] {turn * shrink * M_PER_DEG, place.getLatitudeDeg() * M_PER_DEG});
            } else if (place.getEastM() != null && place.getNorthM() != null) {
                points.add(new double[] {place.getEastM(), place.getNorthM()});
            }
        }
        return points;
    }

    private static boolean isGeographic(Place place) {
        return place.getLatitudeDeg() != null && place.getLongitudeDeg() != null;
    }

    private static double apart(double[] from, double[] to) {
        return Math.hypot(to[0] - from[0], to[1] - from[1]);
    }

    private static double length(List<double[]> points) {
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += apart(points.get(i - 1), points.get(i));
        }
        return length;
    }

    private static double area(List<double[]> points) {
        double twice = 0;
        double[] origin = points.get(0);
        for (int i = 0; i < points.size(); i++) {
            double[] from = points.get(i);
            double[] to = points.get((i + 1) % points.size());
            twice += (from[0] - origin[0]) * (to[1] - origin[1]) - (to[0] - origin[0]) * (from[1] - origin[1]);
        }
        return Math.abs(twice) / 2;
    }

    /** Sides that share a corner, or touch elsewhere, do not cross; so neither does one that closes an outline named as closed. */
    private static boolean crosses(List<double[]> points) {
        int count = points.size();
        for (int i = 0; i < count; i++) {
            for (int j = i + 2; j < count; j++) {
                if (crosses(points.get(i), points.get(i + 1), points.get(j), points.get((j + 1) % count))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean crosses(double[] a, double[] b, double[] c, double[] d) {
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(double[] from, double[] to, double[] point) {
        return Math.signum((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0]));
    }
}
