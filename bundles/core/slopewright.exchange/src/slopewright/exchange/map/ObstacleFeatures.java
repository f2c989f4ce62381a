package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.Aerodrome;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/** Obstacles as features, with how they stand against the surfaces of the aids. */
final class ObstacleFeatures {

    private final AerodromePlaces places;
    private final List<AidEvaluation> aids;

    private ObstacleFeatures(AerodromePlaces places, List<AidEvaluation> aids) {
        this.places = places;
        this.aids = aids;
    }

    static void add(Aerodrome aerodrome, AerodromePlaces places, List<AidEvaluation> aids, List<MapFeature> features,
            MapWords words) {
        ObstacleFeatures maker = new ObstacleFeatures(places, aids);
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            try {
                features.add(maker.feature(obstacle, words));
            } catch (SitingException | IllegalArgumentException e) {
                words.notShown(obstacle.getId(), e);
            }
        }
    }

    private MapFeature feature(Obstacle obstacle, MapWords words) {
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
        StandingAgainst standing = new StandingAgainst();
        aids.forEach(aid -> standing.add(aid, obstacle));
        standing.putInto(facts, words);
        MapFeature.Shape shape = obstacle.getKind() == ObstacleKind.AREA ? MapFeature.Shape.AREA
                : obstacle.getKind() == ObstacleKind.LINE ? MapFeature.Shape.LINE : MapFeature.Shape.POINT;
        return new MapFeature(obstacle.getId(), "obstacle", words.say(ElementNames.of(obstacle)), shape, positions, facts);
    }
}
