package slopewright.report.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.ProjectRules;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Projects;
import slopewright.report.Cautions;
import slopewright.report.ReportOptions;
import slopewright.siting.Siting;
import slopewright.standards.Citation;

/** Puts the report of a project together as XHTML. */
public final class ReportDocument {

    private final Project project;
    private final CheckResult result;
    private final ReportOptions options;
    private final Pictures pictures;
    private final CheckContext context;
    private final Html html = new Html();

    private ReportDocument(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures) {
        this.project = project;
        this.result = result;
        this.options = options;
        this.pictures = pictures;
        context = new CheckContext(project, result.rules(), aid -> ProjectRules.of(project, aid, ruleSet));
    }

    /** Writes the document. */
    public static String write(Project project, CheckResult result, Optional<String> ruleSet, ReportOptions options, Pictures pictures) {
        return new ReportDocument(project, result, ruleSet, options, pictures).writeAll();
    }

    private String writeAll() {
        String name = project.getName() == null ? "Unnamed project" : project.getName();
        html.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" "
                + "lang=\"en\">\n<head>\n");
        html.raw("<meta charset=\"UTF-8\" />\n").element("title", name + ": visual approach slope indicators").element("style", style());
        html.close("head").open("body");
        html.element("div class=\"running\"", name + "  ·  revision " + Numbers.orUnknown(project.getRevision()) + "  ·  "
                + options.date());
        cover(name);
        summary();
        site();
        for (AidSubject subject : context.aids()) {
            new AidChapter(html, project, subject, pictures).write();
        }
        outcomes();
        values();
        publication();
        circuits();
        signatures();
        return html.close("body").close("html").toString();
    }

    private static String style() {
        try (InputStream in = ReportDocument.class.getResourceAsStream("report.css")) {
            return "\n" + new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the style of documents can not be read", e);
        }
    }

    private void cover(String name) {
        html.element("h1", "Visual approach slope indicators").element("p class=\"project\"", name);
        Aerodrome aerodrome = project.getAerodrome();
        html.facts(List.of(
                new String[] {"Aerodrome", aerodrome == null ? "not known"
                        : Numbers.orUnknown(aerodrome.getName()) + " (" + Numbers.orUnknown(aerodrome.getIdentifier()) + ")"},
                new String[] {"Revision", Numbers.orUnknown(project.getRevision())}, new String[] {"Prepared by",
                        Numbers.orUnknown(project.getAuthor())},
                new String[] {"Organisation", Numbers.orUnknown(project.getOrganisation())}, new String[] {"Date of the report",
                        options.date()},
                new String[] {"Checked against", result.rules().descriptor().title() + ", edition " + result.rules().edition()},
                new String[] {"About these rules", result.rules().descriptor().note()}));
        html.open("div class=\"caution\"").element("h3", "Caution");
        Cautions.TEXT.forEach(text -> html.element("p", text));
        html.close("div");
    }

    private void summary() {
        Map<Verdict, Integer> counts = result.counts();
        long toConfirm = result.outcomes().stream().filter(Outcome::toConfirm).count();
        html.element("h2", "Result").open("table class=\"counts\"").row("th", List.of("Passed", "Failed", "Not evaluated", "Not applicable",
                "To be confirmed"));
        html.row("td", List.of(String.valueOf(counts.get(Verdict.PASS)), String.valueOf(counts.get(Verdict.FAIL)),
                String.valueOf(counts.get(Verdict.NOT_EVALUATED)), String.valueOf(counts.get(Verdict.NOT_APPLICABLE)),
                        String.valueOf(toConfirm)));
        html.close("table");
        String verdict = !result.anythingEvaluated() ? "Nothing could be evaluated; no conclusion may be drawn."
                : result.worst().filter(worst -> worst == Severity.FAIL).isPresent() ? "The layout breaks at least one rule."
                        : result.worst().isPresent()
                                ? "No rule is broken, but findings are open: inputs are missing, values are to be confirmed, or "
                                + "warnings stand." : "No rule is broken and nothing is open.";
        html.element("p class=\"verdict\"", verdict);
        List<Outcome> broken = result.outcomes().stream().filter(one -> one.verdict() == Verdict.FAIL
                || one.verdict() == Verdict.NOT_EVALUATED)
                .toList();
        if (!broken.isEmpty()) {
            outcomeTable(broken);
        }
    }

    private void site() {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            return;
        }
        html.element("h2", "Site").facts(List.of(
                new String[] {"Reference point", Numbers.orUnknown(aerodrome.getLatitudeDeg()) + "° N, "
                        + Numbers.orUnknown(aerodrome.getLongitudeDeg())
                        + "° E"},
                new String[] {"Elevation", Numbers.orUnknown(aerodrome.getElevationM(), "m")},
                new String[] {"Vertical datum", Numbers.orUnknown(aerodrome.getVerticalDatum())},
                new String[] {"Coordinates", Numbers.orUnknown(aerodrome.getCoordinateReference())}));
        html.open("table").row("th", List.of("Runway end", "Threshold elevation m", "Displaced m", "Landing distance m", "Width m", "Code",
                "Approach"));
        Projects.hosts(project).stream().filter(host -> host instanceof RunwayEnd).map(host -> (RunwayEnd) host)
                .forEach(end -> html.row("td", List.of(Projects.label(end), Numbers.orUnknown(end.getThresholdElevationM()),
                        Numbers.orUnknown(end.getDisplacedThresholdM()), Numbers.orUnknown(end.getLandingDistanceM()),
                        Projects.runway(end).map(runway -> Numbers.orUnknown(runway.getWidthM())).orElse(""),
                        Projects.runway(end).map(runway -> Numbers.orUnknown(runway.getCodeNumber())).orElse(""),
                        end.getApproachType().getName().toLowerCase(Locale.ROOT).replace('_', ' '))));
        html.close("table");
    }

    private void outcomes() {
        html.element("h2 class=\"chapter\"", "Every outcome");
        outcomeTable(result.outcomes());
    }

    private void outcomeTable(List<Outcome> outcomes) {
        html.open("table class=\"outcomes\"").raw(columns(7, 15, 9, 7, 7, 7, 4, 26, 18)).open("thead");
        html.row("th", List.of("Rule", "Element", "Outcome", "Value", "Limit", "Margin", "Unit", "What was compared", "Source"));
        html.close("thead").open("tbody");
        for (Outcome outcome : outcomes) {
            html.open("tr class=\"" + style(outcome) + "\"");
            for (String cell : List.of(outcome.rule(), outcome.elementPath(), word(outcome), Numbers.plain(outcome.value()),
                    Numbers.plain(outcome.limit()), Numbers.plain(outcome.margin()), outcome.unit(), explanation(outcome),
                    outcome.citation().map(ReportDocument::source).orElse(""))) {
                html.element("td", cell);
            }
            html.close("tr");
        }
        html.close("tbody").close("table");
    }

    private static String columns(int... percent) {
        StringBuilder columns = new StringBuilder("<colgroup>");
        for (int width : percent) {
            columns.append("<col style=\"width:").append(width).append("%\" />");
        }
        return columns.append("</colgroup>").toString();
    }

    private static String explanation(Outcome outcome) {
        return outcome.missing().isEmpty() ? outcome.explanation() : outcome.explanation() + " Missing: " + String.join(", ",
                outcome.missing()) + ".";
    }

    private static String style(Outcome outcome) {
        return outcome.weight().map(Severity::key).orElse(outcome.verdict() == Verdict.PASS ? "pass" : "quiet");
    }

    private static String word(Outcome outcome) {
        return switch (outcome.verdict()) {
            case PASS -> outcome.toConfirm() ? "pass, to be confirmed" : "pass";
            case FAIL -> "FAIL (" + outcome.severity().key() + ")";
            case NOT_APPLICABLE -> "not applicable";
            case NOT_EVALUATED -> "not evaluated";
        };
    }

    private static String source(Citation citation) {
        return citation.text() + " [" + citation.provenance().key() + "]" + (citation.confirmation().isEmpty() ? "" : ", confirmed: "
                + citation.confirmation());
    }

    private void values() {
        html.element("h2", "Values used and where they come from").open("table class=\"values\"")
                .raw(columns(27, 8, 5, 25, 13, 22)).open("thead")
                .row("th", List.of("Value", "Number", "Unit", "Source", "Known as", "Remark")).close("thead").open("tbody");
        Map<String, Siting.CitedUse> used = new LinkedHashMap<>();
        context.aids().forEach(subject -> subject.laid().value().ifPresent(siting -> siting.citations().forEach(use -> used.putIfAbsent(
                siting.ruleSet() + use.name(), use))));
        context.aids().forEach(subject -> subject.solved().value().ifPresent(siting -> siting.citations().forEach(use -> used.putIfAbsent(
                siting.ruleSet() + use.name(), use))));
        used.values().forEach(use -> html.row("td", List.of(use.name(), Numbers.plain(use.value()), use.unit(), use.citation().text(),
                use.citation().provenance().key() + (use.citation().toConfirm() ? ", to be confirmed" : ""), remark(use.citation()))));
        html.close("tbody").close("table");
        overrides();
    }

    private static String remark(Citation citation) {
        return citation.confirmation().isEmpty() ? citation.note() : "Confirmed: " + citation.confirmation();
    }

    private void overrides() {
        if (!project.getOverrides().isEmpty()) {
            html.element("h3", "Values that the project overrides").open("table").row("th", List.of("Value", "Number", "Reason", "Person",
                    "Date"));
            for (ValueOverride one : project.getOverrides()) {
                html.row("td", List.of(Numbers.orUnknown(one.getValueKey()), Numbers.orUnknown(one.getValue()),
                        Numbers.orUnknown(one.getReason()),
                        Numbers.orUnknown(one.getPerson()), Numbers.orUnknown(one.getDate())));
            }
            html.close("table");
        }
        if (!project.getConfirmations().isEmpty()) {
            html.element("h3", "Values that were confirmed").open("table").row("th", List.of("Value", "Against", "Person", "Date"));
            for (ValueConfirmation one : project.getConfirmations()) {
                html.row("td", List.of(Numbers.orUnknown(one.getValueKey()), Numbers.orUnknown(one.getSource()),
                        Numbers.orUnknown(one.getPerson()),
                        Numbers.orUnknown(one.getDate())));
            }
            html.close("table");
        }
    }

    private void publication() {
        html.element("h2", "Data to be published for the aerodrome").open("table").row("th", List.of("Runway or approach", "Type", "Side",
                "Angle",
                "MEHT", "Displacement of the axis"));
        for (AidSubject subject : context.aids()) {
            Optional<Siting> laid = subject.laid().value();
            Double turn = subject.aid().getAxisTurnDeg();
            html.row("td", List.of(Projects.label(subject.host()), subject.family().map(family -> family.name()).orElse("unknown"),
                    subject.aid().getSide().getName().toLowerCase(Locale.ROOT),
                            laid.map(siting -> Numbers.angle(siting.slopeDeg())).orElse("-"),
                    laid.filter(siting -> subject.host() instanceof RunwayEnd).map(siting -> Numbers.metresAndFeet(siting.eyeHeightM()))
                            .orElse("-"),
                    turn == null || turn == 0 ? "none" : Numbers.plain(turn) + "°"));
        }
        html.close("table");
    }

    private void circuits() {
        if (project.getAerodrome() == null || project.getAerodrome().getCircuits().isEmpty()) {
            return;
        }
        html.element("h2", "Circuits and loads").open("table").row("th", List.of("Circuit", "Supply", "Indicator", "Units", "Lamps a unit",
                "Lamp W",
                "Load W"));
        for (Circuit circuit : project.getAerodrome().getCircuits()) {
            double sum = 0;
            for (ApproachAid aid : circuit.getAids()) {
                sum += loadW(aid);
                EquipmentType type = aid.getEquipment();
                html.row("td", List.of(Projects.label(circuit), Numbers.orUnknown(circuit.getSupply()), Projects.label(aid),
                        String.valueOf(aid.getUnits().size()), type == null ? "not known" : Numbers.orUnknown(type.getLampsPerUnit()),
                        type == null ? "not known" : Numbers.orUnknown(type.getLampPowerW()), loadW(aid) == 0 ? "not known"
                                : Numbers.plain(loadW(aid))));
            }
            html.row("th", List.of(Projects.label(circuit), "", "together", "", "", "", Numbers.plain(sum)));
        }
        html.close("table");
    }

    private static double loadW(ApproachAid aid) {
        EquipmentType type = aid.getEquipment();
        if (type == null || type.getLampPowerW() == null || type.getLampsPerUnit() == null) {
            return 0;
        }
        return type.getLampPowerW() * type.getLampsPerUnit() * aid.getUnits().size();
    }

    private void signatures() {
        List<String[]> lines = new ArrayList<>();
        for (String who : List.of("Prepared", "Checked", "Approved by the authority")) {
            lines.add(new String[] {who, "Name                                   Date                    Signature"});
        }
        html.open("div class=\"signatures\"").element("h2", "Signatures").facts(lines).close("div");
    }
}
