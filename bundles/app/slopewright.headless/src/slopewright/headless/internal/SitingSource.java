package slopewright.headless.internal;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.node.ObjectNode;
import picocli.CommandLine.Model.CommandSpec;

import slopewright.checks.PlaceStanding;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.LensLevel;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.OpenData;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.BeamLimits;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.RuleSet;

/**
 * The siting that the words of a command describe: an aid of a file as it stands, a runway end or helipad of a file, or flags alone.
 *
 * @param family the family
 * @param siting the layout
 * @param notes  what was taken for granted on the way
 * @param beam   how far the beams reach to the side; empty where nobody says
 * @param made   of which project and rule set; empty for flags alone
 * @param judged what the check says of the aid as it stands, or of the place in a file where it is solved; empty for flags alone
 * @param place  the place in a file where it is solved; empty for an aid and for flags alone
 * @param host   the runway end or approach direction of a file where it stands or is solved; empty for flags alone
 */
record SitingSource(IndicatorFamily family, Siting siting, List<String> notes, Optional<BeamLimits> beam,
        Optional<MadeFrom> made, Optional<Judged> judged, Optional<PlaceStanding> place,
        Optional<ApproachHost> host) {

    /** What names an element of a file. */
    record Names(Path file, String aid, String end, String helipad) {
    }

    /** Prints a document about it; where it comes from a project, with what it was made from. */
    void printJson(ObjectNode node, PrintStream out) {
        made.ifPresentOrElse(known -> Json.print(node, known, out), () -> Json.print(node, out));
    }

    /** Says what the check has against the aid, or against the place; nothing where all is met, or where there is none. */
    void tell(Streams streams, String command) {
        if (place.isPresent()) {
            judged.ifPresent(found -> found.tellOfPlace(streams, command));
        } else {
            judged.ifPresent(found -> found.tellOfAid(streams, command));
        }
    }

    /** Returns whether something of the place at which it was solved is not met, so that nobody knows where it stands. */
    boolean isAtBrokenPlace() {
        return place.filter(found -> !found.broken().isEmpty()).isPresent();
    }

    static SitingSource of(CommandSpec spec, Names names) {
        if (names.file() == null) {
            if (names.aid() != null || names.end() != null || names.helipad() != null) {
                throw new UsageException("--aid, --end and --helipad need a project file");
            }
            return solve(spec, SitingRequest.builder(), ProjectFiles.rules(SitingFlags.text(spec, "rule-set")), Optional.empty());
        }
        if (Stream.of(names.aid(), names.end(), names.helipad()).filter(Objects::nonNull).count() > 1) {
            throw new UsageException("--aid, --end and --helipad exclude each other; give one");
        }
        Project project = ProjectFiles.load(names.file());
        if (names.aid() != null) {
            SitingFlags.firstBesideRuleSet(spec).ifPresent(flag -> {
                throw new UsageException("--aid takes the aid as it stands; leave " + flag + " away, or name --end or --helipad");
            });
            ApproachAid aid = ProjectFiles.aid(project, names.aid());
            Optional<String> rules = SitingFlags.text(spec, "rule-set");
            AidEvaluation evaluation = ProjectFiles.evaluation(project, aid, rules);
            return standing(evaluation, Judged.of(ProjectFiles.evaluation(project, rules), aid));
        }
        if (names.end() == null && names.helipad() == null) {
            throw new UsageException("name what in " + names.file() + " is meant: --aid, --end or --helipad");
        }
        RuleSet rules = ProjectFiles.rules(project, SitingFlags.text(spec, "rule-set"));
        ApproachHost host = names.end() != null ? ProjectFiles.end(project, names.end()) : ProjectFiles.helipad(project, names.helipad());
        SitingSource solved = solve(spec, AidRequests.ofHost(host, SitingFlags.side(spec).orElse(Side.LEFT)), rules, Optional.of(host));
        ProjectEvaluation evaluation = ProjectFiles.evaluation(project, SitingFlags.text(spec, "rule-set"));
        PlaceStanding place = PlaceStanding.of(evaluation, host);
        Judged judged = Judged.of(evaluation, place);
        List<String> against = place.reasons().stream().map(Message::english).toList();
        return new SitingSource(solved.family(), solved.siting(), joined(against, joined(openData(host), solved.notes())), solved.beam(),
                Optional.of(judged.made()), Optional.of(judged), Optional.of(place), Optional.of(host));
    }

    private static SitingSource standing(AidEvaluation evaluation, Judged judged) {
        Siting siting = ProjectFiles.standing(evaluation);
        return new SitingSource(evaluation.family().orElseThrow(), siting, openData(evaluation.host()), BeamLimits.of(evaluation.aid()),
                Optional.of(judged.made()), Optional.of(judged), Optional.empty(), Optional.of(evaluation.host()));
    }

    /** Says that figures of the runway are open data that nobody confirmed; nothing where they are none. */
    private static List<String> openData(ApproachHost host) {
        return OpenData.restsOn(host) ? List.of(Message.of("open-data.resting", ElementNames.of(host)).english()) : List.of();
    }

    private static List<String> joined(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    /** A family that stands on both sides of a runway, whatever was asked for, is no answer to a question for one side. */
    private static void refuseOtherSide(CommandSpec spec, Siting siting) {
        SitingFlags.side(spec).filter(side -> side != Side.BOTH).ifPresent(side -> {
            double sense = side == Side.LEFT ? -1 : 1;
            if (siting.units().stream().anyMatch(unit -> unit.place().rightM() * sense < 0)) {
                throw new UsageException("--side " + side.name().toLowerCase(Locale.ROOT) + ": " + Families.get(siting.family()).name()
                        + " with " + siting.units().size() + " units stands on both sides; leave --side away");
            }
        });
    }

    /** Where no words say how high the lenses stand, they stand as the comparison of families has them, and it is said. */
    private static SitingRequest withLenses(ApproachHost host, String family, SitingRequest given, List<String> notes) {
        if (given.has(Input.LENS_ABOVE_GROUND) || given.has(Input.LENS_HEIGHT)) {
            return given;
        }
        LensLevel level = LensLevel.at(host, family, given);
        notes.add(level.message().english());
        return level.in(given);
    }

    private static SitingSource solve(CommandSpec spec, SitingRequest.Builder builder, RuleSet rules, Optional<ApproachHost> host) {
        List<String> notes = new ArrayList<>();
        SitingFlags.apply(spec, builder, notes, host.isPresent());
        String family = SitingFlags.text(spec, "family")
                .orElseThrow(() -> new UsageException("--family is missing; see 'slopewright families'"));
        IndicatorFamily found = ProjectFiles.family(family);
        try {
            SitingRequest given = builder.build();
            SitingRequest request = host.map(there -> withLenses(there, family, given, notes)).orElse(given);
            Siting siting = Families.site(found, request, rules);
            refuseOtherSide(spec, siting);
            return new SitingSource(found, siting, notes, Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty());
        } catch (SitingException e) {
            throw new UsageException(host.map(there -> Projects.label(there) + ": ").orElse("") + e.getMessage());
        }
    }
}
