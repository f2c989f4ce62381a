package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import slopewright.evaluation.Attempt;
import slopewright.evaluation.PadArea;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/** Runways, thresholds and helipads as features. */
final class GroundFeatures {

    private final List<MapFeature> features;
    private final MapWords words;

    private GroundFeatures(List<MapFeature> features, MapWords words) {
        this.features = features;
        this.words = words;
    }

    static void add(Aerodrome aerodrome, List<MapFeature> features, MapWords words) {
        aerodrome.getRunways().forEach(runway -> add(runway, features, words, maker -> maker.runway(runway)));
        aerodrome.getHelipads().forEach(helipad -> add(helipad, features, words, maker -> maker.helipad(helipad)));
    }

    /** What cannot be drawn is named and left out whole. */
    private static void add(Identified element, List<MapFeature> features, MapWords words, Consumer<GroundFeatures> work) {
        List<MapFeature> own = new ArrayList<>();
        try {
            work.accept(new GroundFeatures(own, words));
            features.addAll(own);
        } catch (SitingException | IllegalArgumentException e) {
            words.notShown(element.getId(), e);
        }
    }

    private void runway(Runway runway) {
        boolean outlined = false;
        for (RunwayEnd end : runway.getEnds()) {
            Optional<SiteFrame> frame = MapExport.frame(end, words);
            if (frame.isEmpty()) {
                continue;
            }
            if (!outlined && runway.getLengthM() != null && runway.getWidthM() != null) {
                outline(runway, end, frame.get());
                outlined = true;
            }
            threshold(runway, end, frame.get());
        }
        if (!outlined) {
            words.note(Message.of("map.no-outline", Words.name(runway.getId())));
        }
    }

    private void outline(Runway runway, RunwayEnd end, SiteFrame frame) {
        double start = -displacedM(end);
        double finish = start + runway.getLengthM();
        double half = runway.getWidthM() / 2;
        double near = heightM(extremityM(end), frame);
        Optional<RunwayEnd> other = runway.getEnds().stream().filter(each -> each != end).findFirst();
        double opposite = heightM(other.map(GroundFeatures::extremityM).orElse(null), frame);
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("designator", runway.getDesignator());
        facts.put("lengthM", runway.getLengthM());
        facts.put("widthM", runway.getWidthM());
        facts.put("bearingTrueDeg", frame.bearingDeg());
        facts.put("codeNumber", runway.getCodeNumber());
        features.add(new MapFeature(runway.getId() + ".outline", "runway", words.say(ElementNames.of(runway)), MapFeature.Shape.AREA,
                MapFacts.ring(frame, List.of(new FramePoint(start, -half, near), new FramePoint(finish, -half, opposite),
                        new FramePoint(finish, half, opposite), new FramePoint(start, half, near))), facts));
    }

    private static double displacedM(RunwayEnd end) {
        return end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
    }

    /** The elevation where the runway begins: that of the threshold where it is not displaced. */
    private static Double extremityM(RunwayEnd end) {
        return end.getExtremityElevationM() != null || displacedM(end) != 0 ? end.getExtremityElevationM() : end.getThresholdElevationM();
    }

    private static double heightM(Double elevationM, SiteFrame frame) {
        return elevationM == null ? Double.NaN : elevationM - frame.originElevationM();
    }

    private void threshold(Runway runway, RunwayEnd end, SiteFrame frame) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("designator", end.getDesignator());
        facts.put("elevationM", frame.originElevationM());
        facts.put("bearingTrueDeg", frame.bearingDeg());
        facts.put("displacedM", end.getDisplacedThresholdM());
        Double width = runway.getWidthM();
        List<FramePoint> points = width == null ? List.of(new FramePoint(0, 0, 0))
                : List.of(new FramePoint(0, -width / 2, 0), new FramePoint(0, width / 2, 0));
        features.add(new MapFeature(end.getId() + ".threshold", "threshold", words.say(Message.of("map.threshold", Words.name(
                String.valueOf(end.getDesignator())))),
                width == null ? MapFeature.Shape.POINT : MapFeature.Shape.LINE, MapFacts.line(frame, points), facts));
    }

    private void helipad(Helipad helipad) {
        List<Attempt<SiteFrame>> frames = helipad.getDirections().stream().map(direction -> Attempt.of(() -> SiteFrame.of(direction)))
                .toList();
        Optional<SiteFrame> frame = frames.stream().flatMap(each -> each.value().stream()).findFirst();
        if (frame.isEmpty()) {
            words.notShown(helipad.getId(), frames.stream().flatMap(each -> each.reason().stream()).findFirst()
                    .orElseGet(() -> Message.of("map.no-direction")));
            return;
        }
        rectangle(helipad, frame.get(), "fato", helipad.getFatoLengthM(), helipad.getFatoWidthM());
        rectangle(helipad, frame.get(), "tlof", helipad.getTlofLengthM(), helipad.getTlofWidthM());
    }

    private void rectangle(Helipad helipad, SiteFrame frame, String part, Double lengthM, Double widthM) {
        if (lengthM == null || widthM == null) {
            words.note(Message.of("map.no-dimension", Words.name(part.toUpperCase(Locale.ROOT)), Words.name(helipad.getId())));
            return;
        }
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("part", part);
        facts.put("elevationM", frame.originElevationM());
        facts.put("lengthM", lengthM);
        facts.put("widthM", widthM);
        features.add(new MapFeature(helipad.getId() + "." + part, "helipad", words.say(Message.of("map.part",
                ElementNames.of(helipad), Words.name(part.toUpperCase(Locale.ROOT)))), MapFeature.Shape.AREA,
                MapFacts.ring(frame, PadArea.corners(helipad, lengthM, widthM, frame.bearingDeg())), facts));
    }
}
