package slopewright.edit.site;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.edit.AddAid;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Side;
import slopewright.standards.RuleSet;

/**
 * What is known of a new site: one runway end or approach direction with who flies it. Makes the project of it, and its first layout. A
 * number that is not known is missing in the project, so that a finding asks for it.
 */
public final class NewSite {

    private static final double USUAL_DATUM_HEIGHT_M = 15;
    private static final double EYE_TO_ANTENNA_M = 1.5;
    private static final double SAFETY_AREA_SHARE = 1.5;
    private static final double HOVER_HEIGHT_M = 2;

    /**
     * What the parts of the site are called, in the language of whoever begins it.
     *
     * @param runway    the runway
     * @param helipad   the helipad
     * @param glidePath the electronic glide path
     * @param remarks   what the project says about itself
     */
    public record Names(String runway, String helipad, String glidePath, String remarks) {
    }

    private final Map<SiteNumber, Double> numbers = new EnumMap<>(SiteNumber.class);
    private Optional<Project> template = Optional.empty();
    private String name = "";
    private String designator = "09";
    private String ruleSet;
    private String groupName = "";
    private boolean helipad;
    private boolean glidePath;
    private int code = 2;
    private ApproachType approach = ApproachType.VISUAL;

    /**
     * Starts with what is assumed.
     *
     * @param ruleSet name of the rule set with its edition
     */
    public NewSite(String ruleSet) {
        this.ruleSet = ruleSet;
        for (SiteNumber number : SiteNumber.values()) {
            set(number, number.assumed());
        }
    }

    /** Takes over a template: its first runway end or direction is what is known from now on. */
    public void start(Project project) {
        template = Optional.of(project);
        ApproachHost host = Projects.hosts(project).get(0);
        name = String.valueOf(project.getAerodrome().getName());
        ruleSet = project.getRuleSetKey() == null ? ruleSet : ProjectRules.stored(project.getRuleSetKey());
        designator = String.valueOf(host.getDesignator());
        approach = host.getApproachType();
        glidePath = host.getGlidePath() != null;
        put(SiteNumber.SLOPE, host.getDesiredSlopeDeg());
        helipad = !(host instanceof RunwayEnd);
        if (host instanceof RunwayEnd end) {
            putPlace(end.getThreshold(), end.getThresholdElevationM(), end.getTrueBearingDeg());
            Projects.runway(end).ifPresent(runway -> {
                put(SiteNumber.LENGTH, runway.getLengthM());
                put(SiteNumber.WIDTH, runway.getWidthM());
                code = runway.getCodeNumber() == null ? code : runway.getCodeNumber();
            });
        } else if (host instanceof ApproachDirection direction) {
            Helipad pad = Projects.helipad(direction).orElseThrow();
            putPlace(pad.getPlace(), pad.getElevationM(), direction.getTrueBearingDeg());
            put(SiteNumber.FATO, pad.getFatoLengthM());
            put(SiteNumber.EYE_ABOVE_SKIDS, pad.getEyeAboveSkidsM());
        }
        host.getRegularGroups().stream().findFirst().ifPresent(group -> {
            put(SiteNumber.EYE_TO_WHEEL, group.getEyeToWheelM());
            groupName = String.valueOf(group.getName());
        });
    }

    private void putPlace(Place place, Double elevationM, Double bearingDeg) {
        put(SiteNumber.LATITUDE, place == null ? null : place.getLatitudeDeg());
        put(SiteNumber.LONGITUDE, place == null ? null : place.getLongitudeDeg());
        put(SiteNumber.ELEVATION, elevationM);
        put(SiteNumber.BEARING, bearingDeg);
    }

    private void put(SiteNumber number, Double value) {
        set(number, value == null ? OptionalDouble.empty() : OptionalDouble.of(value));
    }

    /** Says what a number is; empty where it is not known. */
    public void set(SiteNumber number, OptionalDouble value) {
        if (value.isPresent()) {
            numbers.put(number, value.getAsDouble());
        } else {
            numbers.remove(number);
        }
    }

    /** Returns a number, in the unit of the model; empty where it is not known. */
    public OptionalDouble number(SiteNumber number) {
        Double found = numbers.get(number);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }

    /** Returns whether a number is still the one that was assumed. */
    public boolean isAssumed(SiteNumber number) {
        return template.isEmpty() && number.assumed().isPresent() && number.assumed().equals(number(number));
    }

    /**
     * Makes the project of what is known. Nothing of it is shared with an earlier one.
     *
     * @param names what its parts are called
     * @return a project with one runway end or approach direction and no aid
     */
    public Project project(Names names) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        project.setName(name);
        project.setRuleSetKey(ruleSet);
        project.setRemarks(names.remarks());
        Aerodrome aerodrome = make.createAerodrome();
        aerodrome.setName(name);
        aerodrome.setElevationM(numbers.get(SiteNumber.ELEVATION));
        aerodrome.setLatitudeDeg(numbers.get(SiteNumber.LATITUDE));
        aerodrome.setLongitudeDeg(numbers.get(SiteNumber.LONGITUDE));
        aerodrome.setCoordinateReference(isLocal() ? "local" : "WGS84");
        project.setAerodrome(aerodrome);
        ApproachHost host = helipad ? direction(aerodrome, names) : end(aerodrome, names);
        host.setDesignator(designator);
        host.setDesiredSlopeDeg(numbers.get(SiteNumber.SLOPE));
        host.setApproachType(approach);
        if (!helipad) {
            fly(aerodrome, host, names);
        }
        template.ifPresent(from -> from.getAerodrome().getEquipmentTypes()
                .forEach(type -> aerodrome.getEquipmentTypes().add(EcoreUtil.copy(type))));
        Ids.assign(project);
        return project;
    }

    private void fly(Aerodrome aerodrome, ApproachHost host, Names names) {
        AeroplaneGroup group = SlopewrightFactory.eINSTANCE.createAeroplaneGroup();
        group.setName(groupName);
        group.setEyeToWheelM(numbers.get(SiteNumber.EYE_TO_WHEEL));
        group.setEyeToAntennaM(glidePath ? EYE_TO_ANTENNA_M : null);
        aerodrome.getAeroplaneGroups().add(group);
        host.getRegularGroups().add(group);
        if (glidePath) {
            GlidePathAid path = SlopewrightFactory.eINSTANCE.createGlidePathAid();
            path.setName(names.glidePath());
            path.setPathAngleDeg(numbers.get(SiteNumber.SLOPE));
            path.setReferenceDatumHeightM(USUAL_DATUM_HEIGHT_M);
            host.setGlidePath(path);
        }
    }

    private RunwayEnd end(Aerodrome aerodrome, Names names) {
        Runway runway = SlopewrightFactory.eINSTANCE.createRunway();
        runway.setName(names.runway());
        runway.setDesignator(designator);
        runway.setLengthM(numbers.get(SiteNumber.LENGTH));
        runway.setWidthM(numbers.get(SiteNumber.WIDTH));
        runway.setCodeNumber(code);
        runway.setPaved(true);
        RunwayEnd end = SlopewrightFactory.eINSTANCE.createRunwayEnd();
        end.setTrueBearingDeg(numbers.get(SiteNumber.BEARING));
        end.setThresholdElevationM(numbers.get(SiteNumber.ELEVATION));
        end.setThreshold(place());
        runway.getEnds().add(end);
        aerodrome.getRunways().add(runway);
        return end;
    }

    private ApproachDirection direction(Aerodrome aerodrome, Names names) {
        Helipad pad = SlopewrightFactory.eINSTANCE.createHelipad();
        pad.setName(names.helipad());
        pad.setPlace(place());
        pad.setElevationM(numbers.get(SiteNumber.ELEVATION));
        Double side = numbers.get(SiteNumber.FATO);
        pad.setFatoLengthM(side);
        pad.setFatoWidthM(side);
        pad.setSafetyAreaWidthM(side == null ? null : side * SAFETY_AREA_SHARE);
        pad.setHoverHeightM(HOVER_HEIGHT_M);
        pad.setEyeAboveSkidsM(numbers.get(SiteNumber.EYE_ABOVE_SKIDS));
        ApproachDirection direction = SlopewrightFactory.eINSTANCE.createApproachDirection();
        direction.setTrueBearingDeg(numbers.get(SiteNumber.BEARING));
        pad.getDirections().add(direction);
        aerodrome.getHelipads().add(pad);
        return direction;
    }

    private boolean isLocal() {
        return !numbers.containsKey(SiteNumber.LATITUDE) || !numbers.containsKey(SiteNumber.LONGITUDE);
    }

    private Place place() {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        if (isLocal()) {
            place.setEastM(0.0);
            place.setNorthM(0.0);
        } else {
            place.setLatitudeDeg(numbers.get(SiteNumber.LATITUDE));
            place.setLongitudeDeg(numbers.get(SiteNumber.LONGITUDE));
        }
        place.setElevationM(numbers.get(SiteNumber.ELEVATION));
        return place;
    }

    /**
     * Lays an indicator out on the left at the first runway end or direction of a project, under the rule set of the project or the first
     * one that covers the family, which the aid then names.
     *
     * @param project   the project
     * @param familyKey key of the family
     * @throws slopewright.siting.SitingException where no layout can be made, with the reason
     */
    public static void layOut(Project project, String familyKey) {
        ApproachHost host = Projects.hosts(project).get(0);
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        RuleSet rules = FamilyComparison.of(evaluation, host).stream().filter(candidate -> candidate.family().key().equals(familyKey))
                .findFirst().map(Candidate::rules).orElse(evaluation.rules());
        AddAid edit = AddAid.solve(host, familyKey, rules, Side.LEFT);
        edit.execute();
        if (!nameOf(rules).equals(nameOf(evaluation.rules()))) {
            edit.aid().setRuleSetKey(nameOf(rules));
        }
    }

    private static String nameOf(RuleSet rules) {
        return rules.key() + ":" + rules.edition();
    }

    /** Returns the name of the aerodrome. */
    public String name() {
        return name;
    }

    /** Names the aerodrome. */
    public void setName(String to) {
        name = to;
    }

    /** Returns the designator of the runway end or approach direction. */
    public String designator() {
        return designator;
    }

    /** Names the runway end or approach direction. */
    public void setDesignator(String to) {
        designator = to;
    }

    /** Returns the name of the rule set. */
    public String ruleSet() {
        return ruleSet;
    }

    /** Chooses the rule set. */
    public void setRuleSet(String to) {
        ruleSet = to;
    }

    /** Names the aeroplanes in regular use. */
    public void setGroupName(String to) {
        groupName = to;
    }

    /** Returns whether the site is a helipad. */
    public boolean isHelipad() {
        return helipad;
    }

    /** Makes the site a helipad or a runway. */
    public void setHelipad(boolean to) {
        helipad = to;
    }

    /** Returns whether there is an electronic glide path. */
    public boolean hasGlidePath() {
        return glidePath;
    }

    /** Says whether there is an electronic glide path. */
    public void setGlidePath(boolean to) {
        glidePath = to;
    }

    /** Returns the code number of the runway. */
    public int code() {
        return code;
    }

    /** Sets the code number of the runway. */
    public void setCode(int to) {
        code = to;
    }

    /** Returns the type of approach. */
    public ApproachType approach() {
        return approach;
    }

    /** Sets the type of approach. */
    public void setApproach(ApproachType to) {
        approach = to;
    }
}
