package slopewright.report.internal.chapters;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.GroundUsed;
import slopewright.evaluation.OpenData;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.MagneticVariation;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Coordinates;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.siting.site.CoordinateBasis;

/** The inputs: site, runways, helipads, aeroplanes, obstacles, equipment. */
final class SiteChapter {

    private static final String DEGREE = "\u00b0";

    private final Html html;
    private final ReportWords words;
    private final Project project;
    private final String day;

    /**
     * Takes what it is written from.
     *
     * @param day the day of the report, for the magnetic variation; that of the entry stands in where it is none
     */
    SiteChapter(Html html, Project project, String day) {
        this.html = html;
        this.project = project;
        this.day = day;
        words = html.words();
    }

    void write() {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            html.alert("no-aerodrome");
            return;
        }
        site(aerodrome);
        runways();
        helipads(aerodrome);
        glidePaths();
        ground();
        aeroplanes(aerodrome);
        equipment(aerodrome);
        obstacles(aerodrome);
        blocks();
    }

    private String known(Object value) {
        return words.orUnknown(value);
    }

    /**
     * Returns the variation on the day of the report, as schedule and card have it: entered and brought to the day, with what the model
     * gives beside it, or the model's alone; empty where neither is known.
     */
    private Optional<String> variation() {
        Optional<ApproachHost> host = Projects.hosts(project).stream().findFirst();
        try {
            LocalDate date = LocalDate.parse(day);
            return host.map(found -> SiteVariation.of(found, date)).map(found -> {
                List<String> said = new ArrayList<>(List.of(words.say(found.variationDeg() < 0 ? "variation-west" : "variation-east",
                        Words.degrees(Math.abs(found.variationDeg())), Words.name(date.toString()), found.source())));
                said.addAll(words.render(found.notes()));
                return String.join(" ", said);
            });
        } catch (DateTimeParseException | SitingException e) {
            return Optional.empty();
        }
    }

    private void site(Aerodrome aerodrome) {
        Facts facts = html.newFacts().add("reference-point", position(aerodrome))
                .add("elevation", words.orUnknown(aerodrome.getElevationM(), "m"))
                .add("vertical-datum", known(aerodrome.getVerticalDatum()))
                .add("geoid-offset", words.orUnknown(aerodrome.getGeoidOffsetM(), "m"))
                .add("coordinates", words.write(CoordinateBasis.of(aerodrome).words()));
        MagneticVariation entered = aerodrome.getMagneticVariation();
        variation().or(() -> Optional.ofNullable(entered).map(found -> words.orUnknown(found.getVariationDeg(), DEGREE) + ", "
                + known(found.getDate()) + ", " + known(found.getSource()))).ifPresent(said -> facts.add("magnetic-variation", said));
        html.section("site").pairs(facts);
    }

    private String position(Aerodrome aerodrome) {
        return aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null ? words.term("not-known")
                : Coordinates.latitude(words, aerodrome.getLatitudeDeg()) + ", "
                        + Coordinates.longitude(words, aerodrome.getLongitudeDeg());
    }

    private void runways() {
        List<RunwayEnd> ends = Projects.hosts(project).stream().filter(RunwayEnd.class::isInstance).map(RunwayEnd.class::cast).toList();
        if (ends.isEmpty()) {
            return;
        }
        html.section("runway-ends").table("numbers", List.of(18, 11, 11, 14, 11, 8, 7, 20), "runway-end", "threshold-m", "displaced-m",
                "landing-distance-m", "bearing-true", "width-m", "code", "approach");
        for (RunwayEnd end : ends) {
            html.row(List.of(words.name(end), known(end.getThresholdElevationM()), known(end.getDisplacedThresholdM()),
                    known(end.getLandingDistanceM()), known(end.getTrueBearingDeg()),
                    known(Projects.runway(end).map(Runway::getWidthM).orElse(null)),
                    known(Projects.runway(end).map(Runway::getCodeNumber).orElse(null)), words.term("approach", end.getApproachType())));
        }
        html.endTable();
        openData();
    }

    /** Whose data the figures of a runway are, for the licence asks for it, and whether somebody compared them. */
    private void openData() {
        for (Runway runway : project.getAerodrome().getRunways()) {
            if (OpenData.isOpen(runway)) {
                html.alert("open-data-open", open(runway));
            } else if (runway.getOpenDataSource() != null) {
                html.remark("open-data-confirmed", open(runway));
            }
        }
    }

    private Argument[] open(Runway runway) {
        return Stream.of(words.name(runway), known(runway.getOpenDataSource()), known(runway.getOpenDataLicence()),
                known(runway.getOpenDataConfirmation()), known(runway.getOpenDataConfirmationPerson()),
                known(runway.getOpenDataConfirmationDate())).map(Words::name).toArray(Argument[]::new);
    }

    /** Which ground each layout rests on; aids of one approach and side share it. */
    private void ground() {
        List<String> said = Projects.aids(project).stream().map(AidEvaluation::of).map(aid -> words.name(aid.host()) + ": "
                + words.render(GroundUsed.of(aid))).distinct().toList();
        if (!said.isEmpty()) {
            html.remark("ground-used", Words.name(String.join("; ", said)));
        }
    }

    private void helipads(Aerodrome aerodrome) {
        if (aerodrome.getHelipads().isEmpty()) {
            return;
        }
        html.section("helipads").table("numbers", List.of(28, 12, 15, 15, 15, 15), "helipad", "elevation-m", "fato-m", "tlof-m",
                "safety-area-m", "hover-height-m");
        for (Helipad pad : aerodrome.getHelipads()) {
            html.row(List.of(words.name(pad), known(pad.getElevationM()),
                    known(pad.getFatoLengthM()) + " \u00d7 " + known(pad.getFatoWidthM()),
                    known(pad.getTlofLengthM()) + " \u00d7 " + known(pad.getTlofWidthM()),
                    known(pad.getSafetyAreaWidthM()), known(pad.getHoverHeightM())));
        }
        html.endTable();
    }

    private void glidePaths() {
        List<ApproachHost> hosts = Projects.hosts(project).stream().filter(host -> host.getGlidePath() != null).toList();
        if (hosts.isEmpty()) {
            return;
        }
        html.section("glide-paths").table("numbers", List.of(28, 18, 18, 18, 18), "runway-end", "kind", "path-angle",
                "reference-datum-height-m", "origin-along-m");
        for (ApproachHost host : hosts) {
            GlidePathAid path = host.getGlidePath();
            html.row(List.of(words.name(host), words.term("glide-path", path.getKind()), known(path.getPathAngleDeg()),
                    known(path.getReferenceDatumHeightM()), known(path.getOriginAlongM())));
        }
        html.endTable();
    }

    private void aeroplanes(Aerodrome aerodrome) {
        if (aerodrome.getAeroplaneGroups().isEmpty()) {
            return;
        }
        html.section("aeroplanes").table("numbers", List.of(36, 16, 16, 16, 16), "group", "eye-to-wheel-path-m", "cockpit-to-wheel-m",
                "eye-to-antenna-m", "share");
        for (AeroplaneGroup group : aerodrome.getAeroplaneGroups()) {
            html.row(List.of(words.name(group), known(group.getEyeToWheelM()), known(group.getStaticCockpitToWheelM()),
                    known(group.getEyeToAntennaM()), known(group.getSharePercent())));
        }
        html.endTable();
    }

    private void equipment(Aerodrome aerodrome) {
        if (aerodrome.getEquipmentTypes().isEmpty()) {
            return;
        }
        html.section("equipment").table("numbers", List.of(28, 12, 16, 12, 14, 18), "type", "beam-width", "adjustable", "transition-min",
                "intensity-cd", "lamps");
        for (EquipmentType type : aerodrome.getEquipmentTypes()) {
            html.row(List.of(words.name(type), known(type.getBeamWidthDeg()),
                    known(type.getMinSettingDeg()) + " / " + known(type.getMaxSettingDeg()), known(type.getTransitionMinutes()),
                    known(type.getIntensityCd()), known(type.getLampsPerUnit()) + " \u00d7 " + known(type.getLampPowerW())));
        }
        html.endTable();
    }

    private void obstacles(Aerodrome aerodrome) {
        if (aerodrome.getObstacles().isEmpty()) {
            return;
        }
        html.section("obstacles").table("numbers", List.of(26, 9, 13, 12, 16, 24), "obstacle", "kind", "top-elevation-m", "lighted",
                "accuracy-m", "source-date");
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            html.row(List.of(words.name(obstacle), words.term("obstacle", obstacle.getKind()), known(obstacle.getTopElevationM()),
                    words.yesNo(obstacle.getLighted()), known(obstacle.getHorizontalAccuracyM()) + ", "
                            + known(obstacle.getVerticalAccuracyM()), known(obstacle.getSource()) + ", " + known(obstacle.getDate())));
        }
        html.endTable();
    }

    private void blocks() {
        if (project.getSurveyBlocks().isEmpty()) {
            return;
        }
        html.section("survey-files").table("fine", List.of(26, 26, 12, 36), "block", "file", "points", "sha-256");
        project.getSurveyBlocks().forEach(block -> html.row(List.of(words.name(block), known(block.getPath()),
                known(block.getPointCount()), known(block.getSha256()))));
        html.endTable();
    }
}
