package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.GlidePathAid;
import slopewright.model.Helipad;
import slopewright.model.MagneticVariation;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/** The inputs: site, runways, helipads, aeroplanes, obstacles, equipment. */
final class SiteChapter {

    private final Html html;
    private final Project project;

    SiteChapter(Html html, Project project) {
        this.html = html;
        this.project = project;
    }

    void write() {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            html.element("p class=\"alert\"", "The project describes no aerodrome.");
            return;
        }
        site(aerodrome);
        runways();
        helipads(aerodrome);
        glidePaths();
        aeroplanes(aerodrome);
        equipment(aerodrome);
        obstacles(aerodrome);
        blocks();
    }

    private void site(Aerodrome aerodrome) {
        List<String[]> facts = new ArrayList<>(List.of(
                new String[] {"Reference point", Numbers.orUnknown(aerodrome.getLatitudeDeg()) + "\u00b0 north, "
                        + Numbers.orUnknown(aerodrome.getLongitudeDeg()) + "\u00b0 east"},
                new String[] {"Elevation", Numbers.orUnknown(aerodrome.getElevationM(), "m")},
                new String[] {"Vertical datum", Numbers.orUnknown(aerodrome.getVerticalDatum())},
                new String[] {"Geoid offset", Numbers.orUnknown(aerodrome.getGeoidOffsetM(), "m")},
                new String[] {"Coordinates", Numbers.orUnknown(aerodrome.getCoordinateReference())}));
        MagneticVariation variation = aerodrome.getMagneticVariation();
        if (variation != null) {
            facts.add(new String[] {"Magnetic variation", Numbers.orUnknown(variation.getVariationDeg(), "\u00b0") + ", "
                    + Numbers.orUnknown(variation.getDate()) + ", " + Numbers.orUnknown(variation.getSource())});
        }
        html.section("Site").facts(facts);
    }

    private void runways() {
        List<RunwayEnd> ends = Projects.hosts(project).stream().filter(RunwayEnd.class::isInstance).map(RunwayEnd.class::cast).toList();
        if (ends.isEmpty()) {
            return;
        }
        html.section("Runway ends").table("numbers", List.of(18, 11, 11, 12, 11, 8, 7, 22), List.of("Runway end",
                "Threshold m", "Displaced m", "Landing distance m", "Bearing true", "Width m", "Code", "Approach"));
        for (RunwayEnd end : ends) {
            html.row("td", List.of(Projects.label(end), Numbers.orUnknown(end.getThresholdElevationM()),
                    Numbers.orUnknown(end.getDisplacedThresholdM()), Numbers.orUnknown(end.getLandingDistanceM()),
                    Numbers.orUnknown(end.getTrueBearingDeg()),
                    Projects.runway(end).map(runway -> Numbers.orUnknown(runway.getWidthM())).orElse(""),
                    Projects.runway(end).map(runway -> Numbers.orUnknown(runway.getCodeNumber())).orElse(""), words(end.getApproachType()
                            .getName())));
        }
        html.endTable();
    }

    private static String words(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void helipads(Aerodrome aerodrome) {
        if (aerodrome.getHelipads().isEmpty()) {
            return;
        }
        html.section("Helipads").table("numbers", List.of(28, 12, 15, 15, 15, 15),
                List.of("Helipad", "Elevation m", "FATO m", "TLOF m", "Safety area m", "Hover height m"));
        for (Helipad pad : aerodrome.getHelipads()) {
            html.row("td", List.of(Projects.label(pad), Numbers.orUnknown(pad.getElevationM()),
                    Numbers.orUnknown(pad.getFatoLengthM()) + " x " + Numbers.orUnknown(pad.getFatoWidthM()),
                    Numbers.orUnknown(pad.getTlofLengthM()) + " x " + Numbers.orUnknown(pad.getTlofWidthM()),
                    Numbers.orUnknown(pad.getSafetyAreaWidthM()), Numbers.orUnknown(pad.getHoverHeightM())));
        }
        html.endTable();
    }

    private void glidePaths() {
        List<ApproachHost> hosts = Projects.hosts(project).stream().filter(host -> host.getGlidePath() != null).toList();
        if (hosts.isEmpty()) {
            return;
        }
        html.section("Electronic glide paths").table("numbers", List.of(28, 18, 18, 18, 18),
                List.of("Runway end", "Kind", "Path angle \u00b0", "Reference datum height m", "Origin along m"));
        for (ApproachHost host : hosts) {
            GlidePathAid path = host.getGlidePath();
            html.row("td", List.of(Projects.label(host), path.getKind().getName(), Numbers.orUnknown(path.getPathAngleDeg()),
                    Numbers.orUnknown(path.getReferenceDatumHeightM()), Numbers.orUnknown(path.getOriginAlongM())));
        }
        html.endTable();
    }

    private void aeroplanes(Aerodrome aerodrome) {
        if (aerodrome.getAeroplaneGroups().isEmpty()) {
            return;
        }
        html.section("Aeroplane groups").table("numbers", List.of(36, 16, 16, 16, 16), List.of("Group", "Eye to wheel path m",
                "Cockpit to wheel, static m", "Eye to antenna m", "Share %"));
        for (AeroplaneGroup group : aerodrome.getAeroplaneGroups()) {
            html.row("td", List.of(Projects.label(group), Numbers.orUnknown(group.getEyeToWheelM()),
                    Numbers.orUnknown(group.getStaticCockpitToWheelM()), Numbers.orUnknown(group.getEyeToAntennaM()),
                    Numbers.orUnknown(group.getSharePercent())));
        }
        html.endTable();
    }

    private void equipment(Aerodrome aerodrome) {
        if (aerodrome.getEquipmentTypes().isEmpty()) {
            return;
        }
        html.section("Equipment").table("numbers", List.of(28, 12, 16, 12, 14, 18), List.of("Type", "Beam width \u00b0",
                "Adjustable from / to \u00b0", "Transition min", "Intensity cd", "Lamps a unit, W"));
        for (EquipmentType type : aerodrome.getEquipmentTypes()) {
            html.row("td", List.of(Projects.label(type), Numbers.orUnknown(type.getBeamWidthDeg()),
                    Numbers.orUnknown(type.getMinSettingDeg()) + " / " + Numbers.orUnknown(type.getMaxSettingDeg()),
                    Numbers.orUnknown(type.getTransitionMinutes()), Numbers.orUnknown(type.getIntensityCd()),
                    Numbers.orUnknown(type.getLampsPerUnit()) + " x " + Numbers.orUnknown(type.getLampPowerW())));
        }
        html.endTable();
    }

    private void obstacles(Aerodrome aerodrome) {
        if (aerodrome.getObstacles().isEmpty()) {
            return;
        }
        html.section("Obstacles").table("numbers", List.of(26, 9, 13, 12, 16, 24), List.of("Obstacle", "Kind",
                "Top elevation m", "Lighted", "Accuracy m: horizontal, vertical", "Source, date"));
        for (Obstacle one : aerodrome.getObstacles()) {
            html.row("td", List.of(Projects.label(one), words(one.getKind().getName()), Numbers.orUnknown(one.getTopElevationM()),
                    one.getLighted() == null ? "not known" : one.getLighted() ? "yes" : "no", Numbers.orUnknown(one
                            .getHorizontalAccuracyM()) + ", " + Numbers.orUnknown(one.getVerticalAccuracyM()), Numbers.orUnknown(one
                                    .getSource()) + ", " + Numbers.orUnknown(one.getDate())));
        }
        html.endTable();
    }

    private void blocks() {
        if (project.getSurveyBlocks().isEmpty()) {
            return;
        }
        html.section("Survey files").table("fine", List.of(26, 26, 12, 36), List.of("Block", "File", "Points", "SHA-256"));
        project.getSurveyBlocks().forEach(block -> html.row("td", List.of(Projects.label(block), Numbers.orUnknown(block.getPath()),
                Numbers.orUnknown(block.getPointCount()), Numbers.orUnknown(block.getSha256()))));
        html.endTable();
    }
}
