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
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Light;
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
    private final List<String> notes;

    AidFeatures(AidEvaluation evaluation, Siting siting, SiteFrame frame, double beamM, List<String> notes) {
        this.evaluation = evaluation;
        this.aid = evaluation.aid();
        this.siting = siting;
        this.frame = frame;
        this.beamM = beamM;
        this.notes = notes;
    }

    void addTo(List<MapFeature> features) {
        OptionalDouble left = limitDeg(aid.getBeamLeftLimitDeg());
        OptionalDouble right = limitDeg(aid.getBeamRightLimitDeg());
        if (left.isEmpty() || right.isEmpty()) {
            notes.add(aid.getId() + " has no beam limits, nor a beam width; its beams are drawn as lines only.");
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
            String reason = siting.noSurface().map(Message::english).orElse("the rule set gives none");
            notes.add(aid.getId() + " has no obstacle surface: " + reason);
        }
    }

    private OptionalDouble limitDeg(Double own) {
        Double whole = aid.getEquipment() == null ? null : aid.getEquipment().getBeamWidthDeg();
        Double half = own != null ? own : whole == null ? null : Double.valueOf(whole / 2);
        return half == null || !(Math.abs(half) < MOST_LIMIT_DEG) ? OptionalDouble.empty() : OptionalDouble.of(Math.abs(half));
    }

    private String name(UnitPlan unit) {
        return Projects.label(aid) + ", unit " + unit.id();
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
        facts.put("aidName", Projects.label(aid));
        facts.put("family", siting.family());
        facts.put("familyName", evaluation.family().map(IndicatorFamily::name).orElse("unknown"));
        facts.put("ruleSet", evaluation.rules().descriptor().title().english());
        facts.put("host", Projects.label(evaluation.host()));
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
        return new MapFeature(id + ".beam", "beam", name(unit) + ", beam at its setting", MapFeature.Shape.AREA, MapFacts.ring(frame, ring),
                facts);
    }

    private MapFeature edge(UnitPlan unit, SectorEdge edge, String id, int number) {
        Map<String, Object> facts = common();
        facts.put("unit", id);
        facts.put("angleDeg", edge.angleDeg());
        facts.put("angle", Angles.format(edge.angleDeg()));
        facts.put("below", words(edge.below()));
        facts.put("above", words(edge.above()));
        facts.put("azimuthTrueDeg", azimuthTrueDeg(unit));
        facts.put("lengthM", beamM);
        String change = words(edge.below()) + " to " + words(edge.above()) + " at " + Angles.format(edge.angleDeg());
        return new MapFeature(id + ".edge-" + number, "sector-edge", name(unit) + ", " + change, MapFeature.Shape.LINE,
                MapFacts.line(frame, ray(unit, edge.angleDeg(), 0)), facts);
    }

    private static String words(Light light) {
        if (light.equals(Light.DARK)) {
            return "dark";
        }
        String form = light.form().name().toLowerCase(Locale.ROOT);
        return ("steady".equals(form) ? "" : form + " ") + light.colour().name().toLowerCase(Locale.ROOT);
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
        return new MapFeature(aid.getId() + ".surface", "surface", Projects.label(aid) + ", obstacle protection surface",
                MapFeature.Shape.AREA, MapFacts.ring(frame, surface.corners()), facts);
    }
}
