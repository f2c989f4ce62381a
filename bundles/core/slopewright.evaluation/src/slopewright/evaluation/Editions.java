package slopewright.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;

/**
 * What of a project stands under an older edition of a shipped rule set, and to which edition it may move. An organisation's own rule set
 * moves where its owner moves it.
 */
public final class Editions {
    /** Which edition took the place of which; that two editions of one key are shipped does not say so. */
    private static final Map<String, String> NEWER = Map.of("icao:5th", "icao:9th");

    private Editions() {
    }

    /**
     * A project or an aid that names an older edition.
     *
     * @param holder    the project or the aid
     * @param attribute its attribute that names the rule set
     * @param named     the name as it stands there, {@code icao} or {@code icao:5th}
     * @param from      key and edition that it means
     * @param to        key and edition of the newer one
     */
    public record Move(Identified holder, EAttribute attribute, String named, String from, String to) {

        /** Returns whether the name has no edition and is read as the one that was the only one when it was written. */
        public boolean isBare() {
            return !named.contains(":");
        }
    }

    /** Returns what of a project may move, itself first; empty where nothing names an older edition. */
    public static List<Move> moves(Project project) {
        List<Move> moves = new ArrayList<>();
        move(project, Literals.PROJECT__RULE_SET_KEY, project.getRuleSetKey()).ifPresent(moves::add);
        for (ApproachAid aid : Projects.aids(project)) {
            move(aid, Literals.APPROACH_AID__RULE_SET_KEY, aid.getRuleSetKey()).ifPresent(moves::add);
        }
        return moves;
    }

    private static Optional<Move> move(Identified holder, EAttribute attribute, String named) {
        return Optional.ofNullable(named).map(ProjectRules::stored).filter(NEWER::containsKey)
                .map(from -> new Move(holder, attribute, named, from, NEWER.get(from)));
    }

    /** Returns how many confirmations, rejections and overrides of a project are for the editions that moves leave. */
    public static long lapsing(Project project, List<Move> moves) {
        Set<String> left = moves.stream().map(Move::from).collect(Collectors.toSet());
        return Stream.concat(project.getConfirmations().stream().map(said -> String.valueOf(said.getRuleSetKey())),
                project.getOverrides().stream().map(own -> String.valueOf(own.getRuleSetKey())))
                .map(ProjectRules::stored).filter(left::contains).count();
    }
}
