package slopewright.evaluation.site;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.ProjectRules;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.Helipad;
import slopewright.model.MagneticVariation;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.descent.DescentSlope;
import slopewright.standards.RuleSet;

/**
 * What is known of a new site: one runway end or approach direction with who flies it. Makes the project of it, and its first layout. A
 * number that is not known is missing in the project, so that a finding asks for it.
 */
public final class NewSite {

    private static final double HUNDREDTHS = 100;

    private final Map<SiteNumber, Double> numbers = new EnumMap<>(SiteNumber.class);
    private final Map<SiteText, String> texts = new EnumMap<>(SiteText.class);
    private final List<Double> furtherBearings = new ArrayList<>();
    private final List<FurtherPad> furtherPads = new ArrayList<>();
    private Optional<Project> template = Optional.empty();
    private Optional<KnownRunway> known = Optional.empty();
    private Optional<UnitKind> kind = Optional.empty();
    private SiteNames names = SiteNames.english("");
    private boolean portable;
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

    /** Takes over a template of the product; its own numbers are assumed, its place is not known. */
    public void start(SiteTemplate chosen) {
        start(chosen.project());
    }

    /** Takes over a template: its first runway end or direction is what is known from now on. */
    public void start(Project project) {
        template = Optional.of(project);
        known = Optional.empty();
        portable = Projects.aids(project).stream().anyMatch(aid -> Boolean.TRUE.equals(aid.getPortable()));
        kind = Optional.empty();
        ApproachHost host = Projects.hosts(project).get(0);
        name = project.getAerodrome().getName() == null ? name : project.getAerodrome().getName();
        ruleSet = project.getRuleSetKey() == null ? ruleSet : ProjectRules.stored(project.getRuleSetKey());
        designator = String.valueOf(host.getDesignator());
        approach = host.getApproachType();
        glidePath = host.getGlidePath() != null;
        put(SiteNumber.EPOCH, project.getAerodrome().getCoordinateEpoch());
        putKnown(SiteNumber.SLOPE, host.getDesiredSlopeDeg());
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

    /**
     * Takes over a runway of open data: its places, elevations and sizes, and what the data lack is not known. The site is a runway.
     *
     * @param runway the runway
     */
    public void start(KnownRunway runway) {
        known = Optional.of(runway);
        helipad = false;
        name = runway.airport();
        designator = runway.first().designator();
        set(SiteNumber.LATITUDE, OptionalDouble.of(runway.first().latitudeDeg()));
        set(SiteNumber.LONGITUDE, OptionalDouble.of(runway.first().longitudeDeg()));
        set(SiteNumber.BEARING, OptionalDouble.of(runway.first().bearingDeg()));
        set(SiteNumber.ELEVATION, runway.first().elevationM());
        set(SiteNumber.LENGTH, runway.lengthM());
        set(SiteNumber.WIDTH, runway.widthM());
        set(SiteNumber.OTHER_ELEVATION, runway.other().map(KnownRunway.End::elevationM).orElse(OptionalDouble.empty()));
        runway.lengthM().ifPresent(length -> code = RunwayParts.codeOf(length));
    }

    /** Returns the open data that the runway is taken from; empty where it is not, or the site is a helipad by now. */
    public Optional<KnownRunway> known() {
        return known.filter(runway -> !helipad);
    }

    /** Returns the other end as open data have it, as long as nobody typed another place, direction or length. */
    Optional<KnownRunway.End> knownOther() {
        return known().filter(runway -> number(SiteNumber.LATITUDE).equals(OptionalDouble.of(runway.first().latitudeDeg()))
                && number(SiteNumber.LONGITUDE).equals(OptionalDouble.of(runway.first().longitudeDeg()))
                && number(SiteNumber.BEARING).equals(OptionalDouble.of(runway.first().bearingDeg()))
                && number(SiteNumber.LENGTH).equals(runway.lengthM())).flatMap(KnownRunway::other);
    }

    private void putPlace(Place place, Double elevationM, Double bearingDeg) {
        put(SiteNumber.LATITUDE, place == null ? null : place.getLatitudeDeg());
        put(SiteNumber.LONGITUDE, place == null ? null : place.getLongitudeDeg());
        putKnown(SiteNumber.ELEVATION, elevationM);
        putKnown(SiteNumber.BEARING, bearingDeg);
    }

    private void putKnown(SiteNumber number, Double value) {
        if (value != null) {
            set(number, OptionalDouble.of(value));
        }
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

    /** Returns a text; empty where it is not known. */
    public Optional<String> text(SiteText text) {
        return Optional.ofNullable(texts.get(text));
    }

    /** Says what a text is; a blank one is not known. */
    public void set(SiteText text, String value) {
        if (value.isBlank()) {
            texts.remove(text);
        } else {
            texts.put(text, value.strip());
        }
    }

    /** Returns whether a number is still the one that was assumed, by itself or by a template of the product. */
    public boolean isAssumed(SiteNumber number) {
        if (template.isEmpty()) {
            return number.assumed().isPresent() && number.assumed().equals(number(number));
        }
        List<SiteTemplate.Assumption> assumed = SiteTemplate.assumptions(template.get());
        Helipad pad = Projects.hosts(template.get()).stream().findFirst().flatMap(Projects::helipad).orElse(null);
        Double said = pad == null ? null : number == SiteNumber.FATO ? pad.getFatoLengthM()
                : number == SiteNumber.EYE_ABOVE_SKIDS ? pad.getEyeAboveSkidsM()
                : number == SiteNumber.SLOPE ? Projects.hosts(template.get()).get(0).getDesiredSlopeDeg() : null;
        boolean asSaid = said != null && number(number).equals(OptionalDouble.of(said));
        boolean placeless = said == null && number.assumed().isPresent() && number.assumed().equals(number(number));
        return !assumed.isEmpty() && (asSaid || placeless);
    }

    /**
     * Makes the project of what is known. Nothing of it is shared with an earlier one.
     *
     * @param called what its parts are called
     * @return a project with its runway end or approach directions and no aid
     */
    public Project project(SiteNames called) {
        names = called;
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        project.setName(name);
        project.setRuleSetKey(ruleSet);
        project.setRemarks(called.remarks());
        project.setAuthor(texts.get(SiteText.AUTHOR));
        project.setDate(texts.get(SiteText.DATE));
        Aerodrome aerodrome = make.createAerodrome();
        aerodrome.setName(name);
        aerodrome.setIdentifier(known().map(KnownRunway::code).orElse(null));
        aerodrome.setElevationM(highest());
        aerodrome.setLatitudeDeg(numbers.get(SiteNumber.LATITUDE));
        aerodrome.setLongitudeDeg(numbers.get(SiteNumber.LONGITUDE));
        aerodrome.setCoordinateReference(isLocal() ? "local" : "WGS84");
        aerodrome.setCoordinateEpoch(numbers.get(SiteNumber.EPOCH));
        aerodrome.setVerticalDatum(texts.get(SiteText.VERTICAL_DATUM));
        number(SiteNumber.VARIATION).ifPresent(deg -> aerodrome.setMagneticVariation(variation(deg)));
        project.setAerodrome(aerodrome);
        if (helipad) {
            new PadParts(this, aerodrome).build(template, called.helipad(), place());
        } else {
            new RunwayParts(this, aerodrome).build(called, groupName, place());
        }
        template.ifPresent(from -> new TemplateParts(from, called).takeOver(project));
        if (helipad) {
            new PadSurvey(this).enter(aerodrome);
        }
        Ids.assign(project);
        return project;
    }

    /** The elevation of an aerodrome is that of its highest threshold. */
    private Double highest() {
        Double here = numbers.get(SiteNumber.ELEVATION);
        Double there = helipad ? null : numbers.get(SiteNumber.OTHER_ELEVATION);
        return here == null || there == null ? here : Double.valueOf(Math.max(here, there));
    }

    private MagneticVariation variation(double deg) {
        MagneticVariation variation = SlopewrightFactory.eINSTANCE.createMagneticVariation();
        variation.setVariationDeg(deg);
        variation.setAnnualChangeDeg(numbers.get(SiteNumber.VARIATION_CHANGE));
        variation.setSource(texts.get(SiteText.VARIATION_SOURCE));
        variation.setDate(texts.get(SiteText.VARIATION_DATE));
        return variation;
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
     * Makes the project with an indicator on the left at its runway end, or at each of its directions, under the rule set of the project or
     * the first one that covers the family, which the aids then name.
     *
     * @param called    what its parts are called
     * @param familyKey key of the family
     * @return the project
     * @throws slopewright.siting.SitingException where no layout can be made, with the reason
     */
    public Project laidOut(SiteNames called, String familyKey) {
        Project project = project(called);
        new PadUnits(this, project, familyKey).layOut();
        return project;
    }

    /** Returns the family of the unit of the template, or of the kind that is wanted; empty where neither is chosen. */
    public Optional<String> familyKey() {
        return kind.map(UnitKind::familyKey).or(() -> template.flatMap(from -> Projects.aids(from).stream().findFirst())
                .map(ApproachAid::getFamilyKey));
    }

    /** Returns the slope: that of the planned descent, to hundredths of a degree, else the one that is wanted, decimal degrees. */
    public OptionalDouble slopeDeg() {
        Double speed = numbers.get(SiteNumber.GROUND_SPEED);
        Double descent = numbers.get(SiteNumber.DESCENT);
        return helipad && speed != null && descent != null ? OptionalDouble.of(Math.round(DescentSlope.ofGroundSpeed(speed, descent)
                .slopeDeg() * HUNDREDTHS) / HUNDREDTHS) : number(SiteNumber.SLOPE);
    }

    SiteNames names() {
        return names;
    }

    static String nameOf(RuleSet rules) {
        return rules.key() + ":" + rules.edition();
    }

    /** Returns whether the unit is a portable one. */
    public boolean isPortable() {
        return helipad && portable;
    }

    /** Makes the unit a portable one, with equipment and a battery. */
    public void setPortable(boolean to) {
        portable = to;
    }

    /** Returns the kind of portable unit that is wanted; empty where that of the template or the first of the family is. */
    public Optional<UnitKind> kind() {
        return kind;
    }

    /** Chooses a kind of portable unit. */
    public void setKind(UnitKind to) {
        kind = Optional.of(to);
        portable = true;
    }

    /** Returns the further landing directions of the first helipad, decimal degrees from true north; the list can be changed. */
    public List<Double> furtherBearings() {
        return furtherBearings;
    }

    /** Returns the helipads beside the first one; the list can be changed. */
    public List<FurtherPad> furtherPads() {
        return furtherPads;
    }

    /** Returns the name of the aerodrome. */
    public String name() {
        return name;
    }

    /** Names the aerodrome. */
    public void setName(String to) {
        name = to;
    }

    /** Returns the designator of the runway end or landing direction; at a helipad one of a bearing is of the bearing that is known. */
    public String designator() {
        Double bearing = numbers.get(SiteNumber.BEARING);
        return helipad && bearing != null && designator.matches("H-\\d{3}") ? PadParts.designator(bearing) : designator;
    }

    /** Returns what the runway is called, by both of its ends where it has two. */
    public String runwayDesignator() {
        Optional<String> taken = knownOther().map(KnownRunway.End::designator);
        return designator + taken.or(() -> RunwayParts.opposite(designator).filter(other -> numbers.containsKey(
                SiteNumber.OTHER_ELEVATION))).map(other -> "/" + other).orElse("");
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
