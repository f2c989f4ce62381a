package slopewright.exchange.map;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/** The features of one aid: its units, their beams and its obstacle surface. */
final class AidFeatures {

    private static final double MOST_LIMIT_DEG = 85;
    private static final double PIECE_M = 1000;

    private final AidEvaluation evaluation;
    private final ApproachAid aid;
    private final Siting siting;
    private final SiteFrame frame;
    private final double beamM;
    private final MapWords words;

    AidFeatures(AidEvaluation evaluation, Siting siting, SiteFrame frame, double beamM, MapWords words) {
        this.evaluation = evaluation;
        this.aid = evaluation.aid();
        this.siting = siting;
        this.frame = frame;
        this.beamM = beamM;
        this.words = words;
    }

    void addTo(List<MapFeature> features) {
        OptionalDouble left = limitDeg(aid.getBeamLeftLimitDeg());
        OptionalDouble right = limitDeg(aid.getBeamRightLimitDeg());
        if (left.isEmpty() || right.isEmpty()) {
            words.note(Message.of("map.no-beam-limits", Words.name(aid.getId())));
        }
        for (int i = 0; i < siting.units().size(); i++) {
            UnitPlan unit = siting.units().get(i);
            String id = elementId(unit, i);
            features.add(new MapFeature(id, "unit", name(unit), MapFeature.Shape.POINT, List.of(MapFacts.position(frame, unit.place())),
                    facts(unit, id)));
            if (left.isPresent() && right.isPresent()) {
                features.add(beam(unit, id, left.getAsDouble(), right.getAsDouble()));
            }
            for (int edge = 0; edge < unit.edges().size(); edge++) {
                features.add(edge(unit, unit.edges().get(edge), id, edge + 1));
            }
        }
        if (siting.surface().isPresent()) {
            features.add(surface(siting.surface().get().geometry()));
        } else {
            words.note(Message.of("map.no-surface", Words.name(aid.getId()), siting.noSurface().orElseGet(() -> Message.of(
                    "map.no-surface.rule-set"))));
        }
    }

    private OptionalDouble limitDeg(Double own) {
        Double whole = aid.getEquipment() == null ? null : aid.getEquipment().getBeamWidthDeg();
        Double half = own != null ? own : whole == null ? null : Double.valueOf(whole / 2);
        return half == null || !(Math.abs(half) < MOST_LIMIT_DEG) ? OptionalDouble.empty() : OptionalDouble.of(Math.abs(half));
    }

    private String name(UnitPlan unit) {
        return words.say(unitName(unit));
    }

    private Message unitName(UnitPlan unit) {
        return Message.of("map.unit", ElementNames.of(aid), Words.name(unit.id()));
    }

    private LightUnit element(UnitPlan unit, int index) {
        List<LightUnit> all = aid.getUnits();
        LightUnit same = index < all.size() ? all.get(index) : null;
        return same != null && unit.id().equals(same.getLabel()) ? same
                : all.stream().filter(each -> unit.id().equals(each.getLabel())).findFirst().orElse(null);
    }

    private String elementId(UnitPlan unit, int index) {
        LightUnit element = element(unit, index);
        return element == null || element.getId() == null ? aid.getId() + ".unit-" + (index + 1) : element.getId();
    }

    private Map<String, Object> common() {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("aid", aid.getId());
        facts.put("aidName", words.say(ElementNames.of(aid)));
        facts.put("family", siting.family());
        facts.put("familyName", words.say(evaluation.family().<Argument>map(Families::name).orElseGet(() -> Words.term(
                "sheet.unknown-type"))));
        facts.put("ruleSet", words.say(evaluation.rules().descriptor().title()));
        facts.put("host", words.say(ElementNames.of(evaluation.host())));
        return facts;
    }

    private Map<String, Object> facts(UnitPlan unit, String id) {
        Map<String, Object> facts = common();
        facts.put("label", unit.id());
        facts.put("bar", unit.bar());
        facts.put("settingDeg", unit.settingDeg());
        facts.put("setting", Angles.format(unit.settingDeg()));
        facts.put("azimuthTrueDeg", azimuthTrueDeg(unit));
        facts.put("alongM", unit.place().alongM());
        facts.put("rightM", unit.place().rightM());
        facts.put("lensElevationM", unit.place().heightM() + frame.originElevationM());
        LightUnit element = aid.getUnits().stream().filter(each -> id.equals(each.getId())).findFirst().orElse(null);
        facts.put("heightAboveGroundM", element == null ? null : element.getHeightAboveGroundM());
        facts.put("frangible", element == null ? null : element.getFrangible());
        return facts;
    }

    private double azimuthTrueDeg(UnitPlan unit) {
        return Angles.normaliseBearingDeg(frame.bearingDeg() + 180 + unit.azimuthDeg());
    }

    /** Returns the point of a sector plane that lies a distance out along the axis and to a side of it, right seen in landing direction. */
    private static FramePoint inPlane(UnitPlan unit, double angleDeg, double outM, double offsetM) {
        double turn = Math.toRadians(unit.azimuthDeg());
        double along = -outM * Math.cos(turn) - offsetM * Math.sin(turn);
        double right = -outM * Math.sin(turn) + offsetM * Math.cos(turn);
        double rise = outM * Angles.tanDeg(angleDeg) + Curvature.dropM(Math.hypot(outM, offsetM), 0);
        return new FramePoint(unit.place().alongM() + along, unit.place().rightM() + right, unit.place().heightM() + rise);
    }

    /** Returns the places of a ray from the lens outward, so close to each other that the curvature between them does not matter. */
    private List<FramePoint> ray(UnitPlan unit, double angleDeg, double limitDeg) {
        int pieces = (int) Math.max(1, Math.ceil(beamM / PIECE_M));
        List<FramePoint> ray = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double out = beamM * i / pieces;
            ray.add(inPlane(unit, angleDeg, out, out * Angles.tanDeg(limitDeg)));
        }
        return ray;
    }

    private MapFeature beam(UnitPlan unit, String id, double leftDeg, double rightDeg) {
        List<FramePoint> ring = new ArrayList<>(ray(unit, unit.settingDeg(), -leftDeg));
        List<FramePoint> back = new ArrayList<>(ray(unit, unit.settingDeg(), rightDeg));
        Collections.reverse(back);
        ring.addAll(back.subList(0, back.size() - 1));
        Map<String, Object> facts = common();
        facts.put("unit", id);
        facts.put("angleDeg", unit.settingDeg());
        facts.put("azimuthTrueDeg", azimuthTrueDeg(unit));
        facts.put("leftLimitDeg", leftDeg);
        facts.put("rightLimitDeg", rightDeg);
        facts.put("lengthM", beamM);
        return new MapFeature(id + ".beam", "beam", words.say(Message.of("map.beam", unitName(unit))),
                MapFeature.Shape.AREA, MapFacts.ring(frame, ring), facts);
    }

    private MapFeature edge(UnitPlan unit, SectorEdge edge, String id, int number) {
        Map<String, Object> facts = common();
        facts.put("unit", id);
        facts.put("angleDeg", edge.angleDeg());
        facts.put("angle", Angles.format(edge.angleDeg()));
        facts.put("below", words.say(light(edge.below())));
        facts.put("above", words.say(light(edge.above())));
        facts.put("azimuthTrueDeg", azimuthTrueDeg(unit));
        facts.put("lengthM", beamM);
        Message name = Message.of("map.edge", unitName(unit), light(edge.below()), light(edge.above()), Words.deg(edge.angleDeg()));
        return new MapFeature(id + ".edge-" + number, "sector-edge", words.say(name), MapFeature.Shape.LINE,
                MapFacts.line(frame, ray(unit, edge.angleDeg(), 0)), facts);
    }

    private static Argument light(Light light) {
        if (light.equals(Light.DARK)) {
            return Words.term("map.dark");
        }
        Argument colour = Words.term("colour." + light.colour().key());
        return light.form() == LightForm.STEADY ? colour
                : Message.of("map.light", Words.term("light-form." + light.form().name().toLowerCase(Locale.ROOT)), colour);
    }

    private MapFeature surface(ProtectionSurface surface) {
        Map<String, Object> facts = common();
        facts.put("slopeDeg", surface.slopeDeg());
        facts.put("slope", Angles.format(surface.slopeDeg()));
        facts.put("startAlongM", surface.startAlongM());
        facts.put("startElevationM", surface.startHeightM() + frame.originElevationM());
        facts.put("innerEdgeM", surface.innerEdgeM());
        facts.put("divergencePercent", surface.divergence() * 100);
        facts.put("lengthM", surface.lengthM());
        facts.put("axisTurnDeg", surface.axisTurnDeg());
        facts.put("distanceM", siting.distanceM());
        facts.put("mehtM", siting.mehtM());
        facts.put("nominalEyeHeightM", siting.nominalEyeHeightM().isPresent() ? siting.nominalEyeHeightM().getAsDouble() : null);
        facts.put("marginM", evaluation.marginM().isPresent() ? evaluation.marginM().getAsDouble() : null);
        facts.put("governing", evaluation.governing().map(ObstacleComparison::label).orElse(null));
        List<String> left = evaluation.obstacles().value().map(SurfaceComparison::uncompared).orElse(List.of()).stream()
                .map(Uncompared::label).toList();
        if (!left.isEmpty()) {
            facts.put("notCompared", String.join("; ", left));
        }
        return new MapFeature(aid.getId() + ".surface", "surface", words.say(Message.of("map.surface", ElementNames.of(aid))),
                MapFeature.Shape.AREA, MapFacts.ring(frame, surface.corners()), facts);
    }
}
