package slopewright.evaluation;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.geometry.Profile;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.GroundLevel;
import slopewright.model.RunwayEnd;
import slopewright.siting.GroundSource;
import slopewright.siting.Side;
import slopewright.siting.SitingException;

/** Which ground a layout rests on, in a sentence: which profile or levels, from where to where, whose, from when and how accurate. */
public final class GroundUsed {
    private static final String UNSAID = "ground.unsaid";

    private GroundUsed() {
    }

    /** Returns the ground under the units of an aid, as the project has it. */
    public static Message of(AidEvaluation aid) {
        return of(aid.host(), AidRequests.side(aid.aid()));
    }

    /**
     * Returns the ground of an approach.
     *
     * @param host the runway end or approach direction
     * @param side the side on which the units stand
     */
    public static Message of(ApproachHost host, Side side) {
        SiteGround ground;
        try {
            ground = SiteGround.of(host, side);
        } catch (SitingException e) {
            return Message.of("ground.unusable", e.reason());
        }
        if (ground.profile().isEmpty()) {
            return Message.of("ground.level");
        }
        Profile profile = ground.profile().get();
        if (ground.source() == GroundSource.TYPED_PROFILE && host instanceof RunwayEnd end) {
            return Message.of("ground.profile", Words.count(end.getSiteProfile().size()), Words.m(profile.firstM()),
                    Words.m(profile.lastM()), details(said(end.getSiteProfileSource()), said(end.getSiteProfileDate()),
                            accuracy(Optional.ofNullable(end.getSiteProfileAccuracyM()))));
        }
        List<GroundLevel> levels = ground.levels();
        return Message.of("ground.levels", Words.count(levels.size()), Words.m(profile.firstM()), Words.m(profile.lastM()),
                details(all(levels.stream().map(GroundLevel::getSource)), all(levels.stream().map(GroundLevel::getDate)), worst(levels)));
    }

    private static Message details(Argument source, Argument date, Argument accuracy) {
        boolean unsaid = Stream.of(source, date, accuracy).allMatch(Words.term(UNSAID)::equals);
        return unsaid ? Message.of("ground.unknown") : Message.of("ground.known", source, date, accuracy);
    }

    /** The least accurate of the levels counts, and where one says nothing, nobody knows. */
    private static Argument worst(List<GroundLevel> levels) {
        boolean known = levels.stream().map(GroundLevel::getVerticalAccuracyM).allMatch(Objects::nonNull);
        return accuracy(known ? levels.stream().map(GroundLevel::getVerticalAccuracyM).max(Double::compare) : Optional.empty());
    }

    private static Argument accuracy(Optional<Double> metres) {
        return metres.<Argument>map(Words::m).orElseGet(() -> Words.term(UNSAID));
    }

    private static Argument all(Stream<String> texts) {
        List<Argument> said = texts.map(text -> text == null || text.isBlank() ? "" : text.strip()).distinct().sorted()
                .map(GroundUsed::said).toList();
        return said.size() == 1 ? said.get(0) : Words.listed(said, 3);
    }

    private static Argument said(String text) {
        return text == null || text.isBlank() ? Words.term(UNSAID) : Words.name(text);
    }
}
