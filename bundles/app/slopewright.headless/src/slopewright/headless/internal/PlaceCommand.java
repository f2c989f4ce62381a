package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/** Places an indicator at a runway end or helipad, laid out as the comparison of families proposes it. */
@CommandLine.Command(name = "place", sortOptions = false,
        description = "Place an indicator at a runway end or helipad, laid out by its rule set as 'compare' proposes it, and write the "
                + "project. Exits 1 where something stands against it; the project is written.")
final class PlaceCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--end", paramLabel = "ID", description = "runway end in the file, by id or designator")
    private String end;

    @Option(names = "--helipad", paramLabel = "ID", description = "helipad or approach direction in the file")
    private String helipad;

    @Option(names = "--family", required = true, paramLabel = "KEY", description = "the family, see 'slopewright families'")
    private String family;

    @Option(names = "--side", paramLabel = "SIDE", description = "left or right, seen in the landing direction (default that of what "
            + "stands there, else left)")
    private String side;

    @Option(names = "--slope-deg", paramLabel = "DEG", converter = NumberWord.class,
            description = "slope of the approach (default its own)")
    private Double slopeDeg;

    @Option(names = "--equipment", paramLabel = "ID", description = "type of equipment in the file, by id or name (default the first of "
            + "the family)")
    private String equipment;

    @Option(names = "--name", paramLabel = "NAME", description = "what the indicator is called (default by its family)")
    private String name;

    @Option(names = "--rule-set", paramLabel = "KEY", description = "rule set that the indicator names as its own")
    private String ruleSet;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        if ((end == null) == (helipad == null)) {
            throw new UsageException("name either a runway end with --end or a helipad with --helipad");
        }
        Optional<Side> wanted = Optional.ofNullable(side).map(PlaceCommand::side);
        Project project = ProjectFiles.load(file);
        ApproachHost host = end != null ? ProjectFiles.end(project, end) : ProjectFiles.helipad(project, helipad);
        IndicatorFamily chosen = Optional.of(ProjectFiles.family(family))
                .filter(found -> end != null ? found.atRunways() : found.atHelipads())
                .orElseThrow(() -> new UsageException("--family: '" + family + "' is not for such a place; "
                        + "see 'slopewright families'"));
        refuseSecond(host, wanted);
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet));
        Candidate candidate = FamilyComparison.of(evaluation, host, chosen, wanted);
        ApproachAid aid = place(project, host, candidate);
        output.write(project);
        streams().sayf("%s: %s, units: %d", aid.getId(), Projects.path(aid), aid.getUnits().size());
        candidate.objections().forEach(reason -> streams().say("Against it: " + reason.english()));
        List<Outcome> broken = broken(project, aid);
        broken.forEach(outcome -> streams().say("Against it: " + outcome.rule() + ", " + outcome.explanation().english()));
        candidate.open().forEach(reason -> streams().say("To clear up: " + reason.english()));
        candidate.remarks().forEach(remark -> streams().say("Note: " + remark.english()));
        return candidate.objections().isEmpty() && broken.isEmpty() ? ExitCodes.OK : ExitCodes.FINDINGS;
    }

    /** What the rules have against it as it stands there now, at the slope and with the equipment that were named. */
    private List<Outcome> broken(Project project, ApproachAid aid) {
        Set<String> own = Ids.elements(aid).stream().map(Identified::getId).collect(Collectors.toSet());
        ProjectEvaluation placed = ProjectFiles.evaluation(project, Optional.ofNullable(ruleSet)).only(aid);
        return Checks.run(placed, rule -> true).outcomes().stream().filter(outcome -> own.contains(outcome.elementId())
                && outcome.verdict() == Verdict.NOT_MET && outcome.severity() == Severity.FAIL).toList();
    }

    private ApproachAid place(Project project, ApproachHost host, Candidate candidate) {
        try {
            ApproachAid aid = candidate.aidFor(project);
            RuleSet rules = candidate.rules();
            RuleSet own = ProjectFiles.rules(project, Optional.empty());
            if (ruleSet != null || !rules.key().equals(own.key()) || !rules.edition().equals(own.edition())) {
                aid.setRuleSetKey(rules.key() + ":" + rules.edition());
            }
            if (name != null) {
                aid.setName(name);
            }
            host.getAids().add(aid);
            if (equipment != null) {
                aid.setEquipment(type(project));
            }
            if (slopeDeg != null) {
                Proposals.layOutForSlope(aid, slopeDeg, rules);
            } else if (equipment != null) {
                Proposals.layOut(aid, rules);
            }
            Ids.assign(aid, project);
            return aid;
        } catch (SitingException e) {
            List<Message> reasons = candidate.objections();
            throw new UsageException(Projects.label(host) + ": " + (reasons.isEmpty() ? e.getMessage() : reasons.get(0).english()));
        }
    }

    /** Another one of the family goes to the other side, or not there at all. */
    private void refuseSecond(ApproachHost host, Optional<Side> wanted) {
        host.getAids().stream().filter(aid -> family.equals(aid.getFamilyKey())).filter(aid -> wanted.isEmpty()
                || aid.getSide().getName().equalsIgnoreCase(wanted.get().name())).findFirst().ifPresent(aid -> {
                    throw new UsageException(aid.getId() + " of that family stands there already; --side names the other side");
                });
    }

    private EquipmentType type(Project project) {
        Aerodrome aerodrome = project.getAerodrome();
        return aerodrome.getEquipmentTypes().stream().filter(type -> equipment.equals(type.getId()) || equipment.equals(type.getName()))
                .findFirst().orElseThrow(() -> new UsageException("--equipment: there is no '" + equipment + "'; known are "
                        + String.join(", ", aerodrome.getEquipmentTypes().stream().map(type -> type.getId() + " (" + type.getName()
                                + ")").toList())));
    }

    private static Side side(String word) {
        return Arrays.stream(Side.values()).filter(each -> each != Side.BOTH && each.name().equals(word.toUpperCase(Locale.ROOT)))
                .findFirst().orElseThrow(() -> new UsageException("--side takes left or right, not '" + word + "'"));
    }
}
