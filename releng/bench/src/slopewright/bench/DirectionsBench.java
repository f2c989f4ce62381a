package slopewright.bench;

import java.util.Random;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.SettableSlopes;
import slopewright.evaluation.landing.TakenDirection;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachType;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.LightColour;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;
import slopewright.model.util.Ids;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** All landing directions and slopes over 10 000 obstacles, one in twenty a line or an area, against one evaluation after another. */
public final class DirectionsBench {
    private static final int OBSTACLES = 10_000;
    private static final int TIMES = 3;
    private static final int SAMPLES = 5;
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private DirectionsBench() {
    }

    /** Takes no words. */
    public static void main(String[] args) {
        measure("sector unit, obstacle surface", "heliport-sector", "icao:9th");
        measure("portable unit, surface and lines of sight", "tri-colour", "faa:2010");
    }

    private static void measure(String name, String family, String ruleSet) {
        ApproachAid aid = site(family);
        RuleSet rules = RuleSets.find(ruleSet).orElseThrow();
        AidEvaluation evaluation = AidEvaluation.of(aid, rules, new EvaluationCache());
        TakenDirection.take(aid, 90, 6, rules);
        evaluation.surroundings().orThrow();
        SettableSlopes slopes = new SettableSlopes(1, 10.9, 0.1, Message.of("landing.range-of-rules"));
        long[] clear = {0};
        double all = Took.best(TIMES, () -> clear[0] = LandingDirections.of(evaluation, slopes).directions().stream()
                .flatMap(direction -> direction.cells().stream()).filter(cell -> cell.isClear()).count()).clock();
        double each = Took.best(TIMES, () -> {
            for (int i = 0; i < SAMPLES; i++) {
                int bearing = i;
                AidEvaluation trial = AidEvaluation.of(aid, rules, new EvaluationCache())
                        .trial(copy -> TakenDirection.take(copy, bearing, 6, rules));
                trial.obstacles().value().map(SurfaceComparison::marginM).orElseThrow();
            }
        }).clock() / SAMPLES;
        int cells = LandingDirections.COUNT * slopes.degrees().size();
        System.out.printf("%s: %d directions x %d slopes over %d obstacles, %d clear: %.2f s (aim 1 or less)%n", name,
                LandingDirections.COUNT, slopes.degrees().size(), OBSTACLES, clear[0], all);
        System.out.printf("one evaluation after another over all at once: %.0f (aim 100 or more)%n", each * cells / all);
    }

    private static ApproachAid site(String family) {
        Project project = MAKE.createProject();
        Aerodrome aerodrome = MAKE.createAerodrome();
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference("WGS84");
        Helipad pad = MAKE.createHelipad();
        pad.setPlace(place(51, -1, null));
        pad.setElevationM(100.0);
        pad.setFatoLengthM(24.0);
        pad.setFatoWidthM(24.0);
        pad.setSafetyAreaWidthM(36.0);
        pad.setHoverHeightM(2.0);
        pad.setEyeAboveSkidsM(1.8);
        aerodrome.getHelipads().add(pad);
        ApproachDirection direction = MAKE.createApproachDirection();
        direction.setTrueBearingDeg(90.0);
        direction.setApproachType(ApproachType.VISUAL);
        pad.getDirections().add(direction);
        ApproachAid aid = MAKE.createApproachAid();
        aid.setName("unit");
        aid.setFamilyKey(family);
        aid.setPortable("tri-colour".equals(family));
        aid.setSlopeDeg(6.0);
        aid.setEquipment(equipment());
        aerodrome.getEquipmentTypes().add(aid.getEquipment());
        direction.getAids().add(aid);
        Random random = new Random(1);
        for (int i = 0; i < OBSTACLES; i++) {
            aerodrome.getObstacles().add(obstacle(i, random));
        }
        ObstacleSurvey survey = MAKE.createObstacleSurvey();
        survey.setReachM(10_000.0);
        survey.setAllRound(true);
        survey.setDate("2026-05-01");
        survey.setSource("scattered by seed");
        survey.setHorizontalAccuracyM(0.5);
        survey.setVerticalAccuracyM(0.3);
        survey.getHosts().add(direction);
        aerodrome.getObstacleSurveys().add(survey);
        Ids.assign(project);
        return aid;
    }

    private static EquipmentType equipment() {
        EquipmentType type = MAKE.createEquipmentType();
        LightColour[] colours = {LightColour.NONE, LightColour.RED, LightColour.GREEN, LightColour.AMBER};
        double[] offsets = {-3, -0.5, 0.5};
        for (int i = 0; i < offsets.length; i++) {
            Transition sector = MAKE.createTransition();
            sector.setOffsetDeg(offsets[i]);
            sector.setBelowColour(colours[i]);
            sector.setAboveColour(colours[i + 1]);
            type.getSectors().add(sector);
        }
        return type;
    }

    private static Obstacle obstacle(int number, Random random) {
        Obstacle obstacle = MAKE.createObstacle();
        obstacle.setName("obstacle " + number);
        double distance = 100 + 6000 * random.nextDouble();
        double angle = 2 * Math.PI * random.nextDouble();
        obstacle.setTopElevationM(100 + distance * 0.07 * Math.pow(random.nextDouble(), 6));
        obstacle.setHorizontalAccuracyM(2.0);
        obstacle.setVerticalAccuracyM(1.0);
        int corners = number % 40 == 0 ? 2 : number % 40 == 20 ? 4 : 1;
        obstacle.setKind(corners == 1 ? ObstacleKind.POINT : corners == 2 ? ObstacleKind.LINE : ObstacleKind.AREA);
        for (int corner = 0; corner < corners; corner++) {
            double aside = 60 * corner * (corner % 2 == 0 ? 1 : -1);
            obstacle.getPlaces().add(place(51 + (distance * Math.cos(angle) + aside) / 111_000,
                    -1 + (distance * Math.sin(angle) + 40 * corner) / 70_000, null));
        }
        return obstacle;
    }

    private static Place place(double latitudeDeg, double longitudeDeg, Double elevationM) {
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(latitudeDeg);
        place.setLongitudeDeg(longitudeDeg);
        place.setElevationM(elevationM);
        return place;
    }
}
