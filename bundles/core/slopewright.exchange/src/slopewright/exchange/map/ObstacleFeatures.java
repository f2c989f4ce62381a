package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.exchange.LaidAid;
import slopewright.geometry.Penetration;
import slopewright.model.Aerodrome;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/** Obstacles as features, with how they stand against the surfaces of the aids. */
final class ObstacleFeatures {

    private final AerodromePlaces places;
    private final List<LaidAid> aids;

    private ObstacleFeatures(AerodromePlaces places, List<LaidAid> aids) {
        this.places = places;
        this.aids = aids;
    }

    static void add(Aerodrome aerodrome, AerodromePlaces places, List<LaidAid> aids, List<MapFeature> features, List<String> notes) {
        ObstacleFeatures maker = new ObstacleFeatures(places, aids);
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            try {
                features.add(maker.feature(obstacle));
            } catch (SitingException | IllegalArgumentException e) {
                notes.add(obstacle.getId() + " is not shown: " + e.getMessage());
            }
        }
    }

    private MapFeature feature(Obstacle obstacle) {
        List<MapPosition> positions = new ArrayList<>();
        for (Place place : obstacle.getPlaces()) {
            SiteFrame.LatLon where = places.latLon(place).orElseThrow();
            Double top = place.getElevationM() != null ? place.getElevationM() : obstacle.getTopElevationM();
            positions.add(new MapPosition(where.latitudeDeg(), where.longitudeDeg(), top == null ? Double.NaN : top));
        }
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("topElevationM", obstacle.getTopElevationM());
        facts.put("horizontalAccuracyM", obstacle.getHorizontalAccuracyM());
        facts.put("verticalAccuracyM", obstacle.getVerticalAccuracyM());
        facts.put("source", obstacle.getSource());
        facts.put("date", obstacle.getDate());
        putComparison(obstacle, facts);
        MapFeature.Shape shape = obstacle.getKind() == ObstacleKind.AREA ? MapFeature.Shape.AREA
                : obstacle.getKind() == ObstacleKind.LINE ? MapFeature.Shape.LINE : MapFeature.Shape.POINT;
        return new MapFeature(obstacle.getId(), "obstacle", Projects.label(obstacle), shape, positions, facts);
    }

    /** An excess above zero is a penetration; below zero it is the room that is left. */
    private void putComparison(Obstacle obstacle, Map<String, Object> facts) {
        List<String> words = new ArrayList<>();
        Optional<Penetration> worst = Optional.empty();
        String worstAid = null;
        int compared = 0;
        for (LaidAid laid : aids) {
            String name = Projects.label(laid.aid()) + ": ";
            if (laid.siting().isEmpty() || laid.siting().get().surface().isEmpty()) {
                words.add(name + "not compared, there is no surface");
                continue;
            }
            try {
                Optional<Penetration> found = SurveyedShape.of(obstacle, SiteFrame.of(laid.host())).compare(laid.siting().get().surface().get().geometry());
                compared++;
                words.add(name + found.map(ObstacleFeatures::words).orElse("outside"));
                if (found.isPresent() && (worst.isEmpty() || found.get().excessM() > worst.get().excessM())) {
                    worst = found;
                    worstAid = laid.aid().getId();
                }
            } catch (SitingException e) {
                words.add(name + "not compared, " + e.getMessage());
            }
        }
        boolean penetrates = worst.isPresent() && worst.get().excessM() > 0;
        facts.put("penetrates", penetrates || compared == aids.size() && compared > 0 ? penetrates : null);
        facts.put("excessM", worst.map(Penetration::excessM).orElse(null));
        facts.put("surfaceOf", worstAid);
        facts.put("comparison", String.join("; ", words));
    }

    private static String words(Penetration found) {
        return String.format(Locale.ROOT, found.excessM() > 0 ? "%.2f m through the surface" : "%.2f m below the surface",
                Math.abs(found.excessM()));
    }
}
