package slopewright.report.handover;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;

import slopewright.drawing.View;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.exchange.circuit.LoadSchedule;
import slopewright.exchange.map.GeoJsonFile;
import slopewright.exchange.map.KmlFile;
import slopewright.exchange.map.MapDocument;
import slopewright.exchange.map.MapExport;
import slopewright.exchange.publish.PublishedData;
import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetFile;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.report.CommissioningSheets;
import slopewright.report.Drawings;
import slopewright.report.ReportException;
import slopewright.report.Reports;
import slopewright.report.SetUpCards;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/** The list of all files that a project can be handed over as. A further one is a further line here. */
public final class Deliverables {

    private static final double EYE_BEFORE_M = 1500;

    private final List<Deliverable> all = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    private Deliverables() {
    }

    /**
     * Lists what a project can be handed over as.
     *
     * @param project the project
     * @return one entry a file, those about the whole project first
     */
    public static List<Deliverable> of(Project project) {
        Deliverables list = new Deliverables();
        list.addWhole();
        Projects.aids(project).forEach(list::addAid);
        return List.copyOf(list.all);
    }

    private void addWhole() {
        whole("report", "Report", "report.pdf", true, (one, options) -> Reports.write(one, Optional.empty(), options.report(),
                Reports.Format.PDF));
        whole("report", "Report", "report.html", false, (one, options) -> Reports.write(one, Optional.empty(), options.report(),
                Reports.Format.HTML));
        table("schedule", "Setting-out schedule", true, (one, options) -> SettingOutSchedule.of(evaluated(one), options.date()).sheet());
        table("circuits", "Circuits and loads", false, (one, options) -> LoadSchedule.of(one).sheet());
        table("publish", "Data to publish", false, (one, options) -> PublishedData.of(evaluated(one)).sheet());
        whole("map", "Map features", "map.geojson", false, (one, options) -> map(one, GeoJsonFile::bytes));
        whole("map", "Map features", "map.kml", false, (one, options) -> map(one, KmlFile::bytes));
    }

    private void table(String kind, String label, boolean usual, BiFunction<Project, HandoverOptions, Sheet> sheet) {
        whole(kind, label, kind + ".csv", usual, (one, options) -> SheetFile.csv(sheet.apply(one, options)));
        whole(kind, label, kind + ".xlsx", usual, (one, options) -> workbook(sheet.apply(one, options)));
    }

    private void whole(String kind, String label, String fileName, boolean usual, Deliverable.Writer writer) {
        String extension = fileName.substring(fileName.lastIndexOf('.') + 1);
        all.add(new Deliverable(kind + "-" + extension, kind, label, "", fileName, usual, writer, Optional.empty()));
    }

    private void addAid(ApproachAid aid) {
        for (View view : View.values()) {
            Deliverable.Writer picture = (one, options) -> drawing(one, aid.getId(), view, options, Drawings.Format.PNG);
            for (Drawings.Format format : List.of(Drawings.Format.PDF, Drawings.Format.DXF, Drawings.Format.SVG)) {
                boolean usual = format == Drawings.Format.PDF && (view == View.PLAN || view == View.SECTION || view == View.SURFACE);
                about(aid, "drawing-" + view.key(), "Drawing: " + view.key(), format.name().toLowerCase(Locale.ROOT), usual,
                        (one, options) -> drawing(one, aid.getId(), view, options, format), Optional.of(picture));
            }
        }
        about(aid, "commissioning", "Commissioning sheet", "pdf", true, (one, options) -> {
            ApproachAid own = find(one, aid.getId());
            return CommissioningSheets.write(one, own, rules(one, own), options.report(), Reports.Format.PDF);
        }, Optional.empty());
        if (Boolean.TRUE.equals(aid.getPortable())) {
            about(aid, "card", "Set-up card", "pdf", true, (one, options) -> {
                ApproachAid own = find(one, aid.getId());
                return SetUpCards.write(one, own, rules(one, own), options.date(), options.paper(), Reports.Format.PDF);
            }, Optional.empty());
        }
    }

    private void about(ApproachAid aid, String kind, String label, String extension, boolean usual, Deliverable.Writer writer,
            Optional<Deliverable.Writer> picture) {
        String stem = Projects.label(aid).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        String name = (stem.isEmpty() ? aid.getId() : stem) + "-" + kind.replace("drawing-", "");
        String free = names.contains(name + "." + extension) ? name + "-" + aid.getId() : name;
        names.add(free + "." + extension);
        all.add(new Deliverable(kind + "-" + extension + " " + aid.getId(), kind, label, Projects.path(aid), free + "." + extension, usual,
                writer, picture));
    }

    private static ApproachAid find(Project project, String id) {
        return Ids.find(project, id).filter(ApproachAid.class::isInstance).map(ApproachAid.class::cast)
                .orElseThrow(() -> new SitingException("the aid " + id + " is no longer part of the project"));
    }

    private static RuleSet rules(Project project, ApproachAid aid) {
        return ProjectRules.of(project, aid, Optional.empty());
    }

    private static byte[] drawing(Project project, String aidId, View view, HandoverOptions options, Drawings.Format format)
            throws ReportException {
        ApproachAid aid = find(project, aidId);
        RuleSet rules = rules(project, aid);
        DrawnAid drawn = DrawnAid.of(aid, AidLayouts.evaluate(aid, rules));
        return Drawings.write(new Drawings.Subject(drawn, view, PilotScene.eyeOnSlope(drawn, EYE_BEFORE_M), Daylight.values()[0]),
                new Drawings.Layout(options.sheet(), 0, rules.descriptor().title(), options.date().toString()), format);
    }

    private static byte[] workbook(Sheet sheet) throws ReportException {
        try {
            return SheetFile.xlsx(sheet);
        } catch (IOException e) {
            throw new ReportException("the workbook can not be put together: " + e.getMessage(), e);
        }
    }

    private static ProjectEvaluation evaluated(Project project) {
        return ProjectEvaluation.of(project, Optional.empty());
    }

    private static byte[] map(Project project, Function<MapDocument, byte[]> form) {
        ProjectEvaluation evaluation = evaluated(project);
        return form.apply(MapExport.of(evaluation, evaluation.aids(), MapExport.USUAL_BEAM_M));
    }
}
