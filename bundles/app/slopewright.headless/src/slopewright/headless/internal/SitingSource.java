package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine.Model.CommandSpec;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.aid.AidLayouts;
import slopewright.siting.aid.AidRequests;
import slopewright.standards.RuleSet;

/**
 * The siting that the words of a command describe: an aid of a file as it stands, a runway end or helipad of a file, or flags alone.
 *
 * @param family the family
 * @param siting the layout
 * @param notes  what was taken for granted on the way
 */
record SitingSource(IndicatorFamily family, Siting siting, List<String> notes) {

    /** What names an element of a file. */
    record Names(Path file, String aid, String end, String helipad) {
    }

    static SitingSource of(CommandSpec spec, Names names) {
        if (names.file() == null) {
            if (names.aid() != null || names.end() != null || names.helipad() != null) {
                throw new UsageException("--aid, --end and --helipad need a project file");
            }
            return solve(spec, SitingRequest.builder(), ProjectFiles.rules(SitingFlags.text(spec, "rule-set")), Optional.empty());
        }
        Project project = ProjectFiles.load(names.file());
        if (names.aid() != null) {
            ApproachAid aid = ProjectFiles.aid(project, names.aid());
            Optional<String> named = SitingFlags.text(spec, "rule-set").or(() -> Optional.ofNullable(aid.getRuleSetKey()));
            return asLaid(aid, ProjectFiles.rules(project, named));
        }
        if (names.end() == null && names.helipad() == null) {
            throw new UsageException("name what in " + names.file() + " is meant: --aid, --end or --helipad");
        }
        RuleSet rules = ProjectFiles.rules(project, SitingFlags.text(spec, "rule-set"));
        ApproachHost host = names.end() != null ? ProjectFiles.end(project, names.end()) : ProjectFiles.helipad(project, names.helipad());
        return solve(spec, AidRequests.ofHost(host), rules, Optional.of(host));
    }

    private static SitingSource asLaid(ApproachAid aid, RuleSet rules) {
        try {
            return new SitingSource(Families.get(String.valueOf(aid.getFamilyKey())), AidLayouts.asLaid(aid, rules), List.of());
        } catch (SitingException e) {
            throw new UsageException("approach aid " + aid.getId() + ": " + e.getMessage());
        }
    }

    private static SitingSource solve(CommandSpec spec, SitingRequest.Builder builder, RuleSet rules, Optional<ApproachHost> host) {
        List<String> notes = new ArrayList<>();
        SitingFlags.apply(spec, builder, notes, host.isPresent());
        String family = SitingFlags.text(spec, "family")
                .orElseThrow(() -> new UsageException("--family is missing; see 'slopewright families'"));
        try {
            Siting siting = Families.site(family, builder.build(), rules);
            return new SitingSource(Families.get(family), siting, notes);
        } catch (SitingException e) {
            throw new UsageException(host.map(one -> Projects.label(one) + ": ").orElse("") + e.getMessage());
        }
    }
}
