package slopewright.rcp.internal.site;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.ProjectRules;
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
import slopewright.rcp.internal.Messages;
import slopewright.standards.RuleSet;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What the wizard knows so far: what the user typed, what of it is still assumed, and the project that it makes of that. */
public final class SiteDraft {

    private static final double USUAL_DATUM_HEIGHT_M = 15;
    private static final double EYE_TO_ANTENNA_M = 1.5;

    private final Map<SiteField, String> typed = new EnumMap<>(SiteField.class);
    private Optional<Project> template = Optional.empty();
    private String name = Messages.get("site.default-name");
    private String designator = "09";
    private String ruleSet = Preferences.ruleSet();
    private String familyKey = "";
    private String groupName = Messages.get("site.group");
    private boolean helipad;
    private boolean glidePath;
    private int code = 2;
    private ApproachType approach = ApproachType.VISUAL;

    /** Starts with what is assumed. */
    public SiteDraft() {
        QuantityFormat format = QuantityFormat.preferred();
        for (SiteField field : SiteField.values()) {
            typed.put(field, field.assumed().isEmpty() ? "" : format.show(Double.parseDouble(field.assumed()), field.quantity()));
        }
    }

    /** Takes over a template: its first runway end or direction gives what is typed from now on. */
    public void start(Project project) {
        template = Optional.of(project);
        ApproachHost host = Projects.hosts(project).get(0);
        name = String.valueOf(project.getAerodrome().getName());
        ruleSet = project.getRuleSetKey() == null ? ruleSet : project.getRuleSetKey();
        designator = String.valueOf(host.getDesignator());
        approach = host.getApproachType();
        glidePath = host.getGlidePath() != null;
        put(SiteField.SLOPE, host.getDesiredSlopeDeg());
        helipad = !(host instanceof RunwayEnd);
        if (host instanceof RunwayEnd end) {
            place(end.getThreshold(), end.getThresholdElevationM(), end.getTrueBearingDeg());
            Projects.runway(end).ifPresent(runway -> {
                put(SiteField.LENGTH, runway.getLengthM());
                put(SiteField.WIDTH, runway.getWidthM());
                code = runway.getCodeNumber() == null ? code : runway.getCodeNumber();
            });
        } else if (host instanceof ApproachDirection direction) {
            Helipad pad = Projects.helipad(direction).orElseThrow();
            place(pad.getPlace(), pad.getElevationM(), direction.getTrueBearingDeg());
            put(SiteField.FATO, pad.getFatoLengthM());
            put(SiteField.EYE_ABOVE_SKIDS, pad.getEyeAboveSkidsM());
        }
        host.getRegularGroups().stream().findFirst().ifPresent(group -> {
            put(SiteField.EYE_TO_WHEEL, group.getEyeToWheelM());
            groupName = String.valueOf(group.getName());
        });
    }

    private void place(Place place, Double elevationM, Double bearingDeg) {
        put(SiteField.LATITUDE, place == null ? null : place.getLatitudeDeg());
        put(SiteField.LONGITUDE, place == null ? null : place.getLongitudeDeg());
        put(SiteField.ELEVATION, elevationM);
        put(SiteField.BEARING, bearingDeg);
    }

    private void put(SiteField field, Double value) {
        typed.put(field, value == null ? "" : QuantityFormat.preferred().show(value, field.quantity()));
    }

    /** Returns what is typed in a field. */
    public String text(SiteField field) {
        return typed.get(field);
    }

    /** Keeps what is typed in a field. */
    public void type(SiteField field, String text) {
        typed.put(field, text);
    }

    /** Returns whether a field still says what the wizard assumed. */
    public boolean isAssumed(SiteField field) {
        return template.isEmpty() && !field.assumed().isEmpty() && value(field).orElse(Double.NaN) == Double.parseDouble(field.assumed());
    }

    /** Returns the number typed in a field, empty where there is none or it is not understood. */
    public OptionalDouble value(SiteField field) {
        try {
            return text(field).isBlank() ? OptionalDouble.empty()
                    : OptionalDouble.of(QuantityFormat.preferred().read(text(field), field.quantity()));
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    /** Returns what is wrong with a field, empty where nothing is. */
    public Optional<String> problem(SiteField field) {
        String label = Messages.get(field.key());
        if (!field.isAsked(helipad) || text(field).isBlank() && field.quantity() == Quantity.COORDINATE) {
            return Optional.empty();
        }
        if (text(field).isBlank()) {
            return Optional.of(Messages.get("site.needed", label));
        }
        try {
            QuantityFormat format = QuantityFormat.preferred();
            double value = format.read(text(field), field.quantity());
            return value >= field.least() && value <= field.greatest() ? Optional.empty()
                    : Optional.of(Messages.get("site.range", label, format.showWithUnit(field.least(), field.quantity()),
                            format.showWithUnit(field.greatest(), field.quantity())));
        } catch (IllegalArgumentException e) {
            return Optional.of(label + ": " + e.getMessage());
        }
    }

    /** Returns what is wrong with the place as a whole, empty where nothing is. */
    public Optional<String> placeProblem() {
        boolean half = text(SiteField.LATITUDE).isBlank() != text(SiteField.LONGITUDE).isBlank();
        return half ? Optional.of(Messages.get("site.half-place")) : Optional.empty();
    }

    /** Returns the rules that the site is laid out by. */
    public RuleSet rules() {
        return ProjectRules.of(project(), Optional.empty());
    }

    /**
     * Makes the project of what is known. Nothing of it is shared with an earlier one.
     *
     * @return a project with one runway end or approach direction and no aid; what is not understood is missing
     */
    public Project project() {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        project.setName(name);
        project.setRuleSetKey(ruleSet);
        project.setRemarks(Messages.get("site.remarks"));
        Aerodrome aerodrome = make.createAerodrome();
        aerodrome.setName(name);
        aerodrome.setElevationM(number(SiteField.ELEVATION));
        aerodrome.setLatitudeDeg(number(SiteField.LATITUDE));
        aerodrome.setLongitudeDeg(number(SiteField.LONGITUDE));
        aerodrome.setCoordinateReference(isLocal() ? "local" : "WGS84");
        project.setAerodrome(aerodrome);
        ApproachHost host = helipad ? direction(aerodrome) : end(aerodrome);
        host.setDesignator(designator);
        host.setDesiredSlopeDeg(number(SiteField.SLOPE));
        host.setApproachType(approach);
        if (!helipad) {
            AeroplaneGroup group = make.createAeroplaneGroup();
            group.setName(groupName);
            group.setEyeToWheelM(number(SiteField.EYE_TO_WHEEL));
            group.setEyeToAntennaM(glidePath ? EYE_TO_ANTENNA_M : null);
            aerodrome.getAeroplaneGroups().add(group);
            host.getRegularGroups().add(group);
            if (glidePath) {
                GlidePathAid path = make.createGlidePathAid();
                path.setName(Messages.get("site.glide-path-name", designator));
                path.setPathAngleDeg(number(SiteField.SLOPE));
                path.setReferenceDatumHeightM(USUAL_DATUM_HEIGHT_M);
                host.setGlidePath(path);
            }
        }
        template.ifPresent(from -> equip(from, aerodrome));
        Ids.assign(project);
        return project;
    }

    /** Copies the equipment types of a template, which only the user changes later. */
    private static void equip(Project from, Aerodrome aerodrome) {
        from.getAerodrome().getEquipmentTypes().forEach(type -> {
            aerodrome.getEquipmentTypes().add(EcoreUtil.copy(type));
        });
    }

    private RunwayEnd end(Aerodrome aerodrome) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Runway runway = make.createRunway();
        runway.setName(Messages.get("site.runway-name", designator));
        runway.setDesignator(designator);
        runway.setLengthM(number(SiteField.LENGTH));
        runway.setWidthM(number(SiteField.WIDTH));
        runway.setCodeNumber(code);
        runway.setPaved(true);
        RunwayEnd end = make.createRunwayEnd();
        end.setTrueBearingDeg(number(SiteField.BEARING));
        end.setThresholdElevationM(number(SiteField.ELEVATION));
        end.setThreshold(place());
        runway.getEnds().add(end);
        aerodrome.getRunways().add(runway);
        return end;
    }

    private ApproachDirection direction(Aerodrome aerodrome) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Helipad pad = make.createHelipad();
        pad.setName(Messages.get("site.helipad-name"));
        pad.setPlace(place());
        pad.setElevationM(number(SiteField.ELEVATION));
        pad.setFatoLengthM(number(SiteField.FATO));
        pad.setFatoWidthM(number(SiteField.FATO));
        Double side = number(SiteField.FATO);
        pad.setSafetyAreaWidthM(side == null ? null : side * 1.5);
        pad.setHoverHeightM(2.0);
        pad.setEyeAboveSkidsM(number(SiteField.EYE_ABOVE_SKIDS));
        ApproachDirection direction = make.createApproachDirection();
        direction.setTrueBearingDeg(number(SiteField.BEARING));
        pad.getDirections().add(direction);
        aerodrome.getHelipads().add(pad);
        return direction;
    }

    private boolean isLocal() {
        return value(SiteField.LATITUDE).isEmpty() || value(SiteField.LONGITUDE).isEmpty();
    }

    private Place place() {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        if (isLocal()) {
            place.setEastM(0.0);
            place.setNorthM(0.0);
        } else {
            place.setLatitudeDeg(number(SiteField.LATITUDE));
            place.setLongitudeDeg(number(SiteField.LONGITUDE));
        }
        place.setElevationM(number(SiteField.ELEVATION));
        return place;
    }

    private Double number(SiteField field) {
        OptionalDouble value = value(field);
        return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
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

    /** Returns the key of the chosen family, empty where none is chosen. */
    public String familyKey() {
        return familyKey;
    }

    /** Chooses a family. */
    public void setFamilyKey(String to) {
        familyKey = to;
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
