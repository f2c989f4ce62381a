package slopewright.evaluation.site;

import java.util.function.Function;

import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * What the parts of a new site are called, in the language of whoever begins it.
 *
 * @param runway    the runway
 * @param helipad   the helipad
 * @param glidePath the electronic glide path
 * @param battery   the battery of a portable unit
 * @param supply    the circuit of a unit that stays
 * @param survey    the survey of what stands round a pad
 * @param remarks   what the project says about itself
 * @param words     makes words of a message
 */
public record SiteNames(String runway, String helipad, String glidePath, String battery, String supply, String survey, String remarks,
        Function<Message, String> words) {

    /** Returns the names in English. */
    public static SiteNames english(String designator) {
        return in(Message::english, designator);
    }

    /**
     * Returns the names in a language.
     *
     * @param words      makes words of a message
     * @param designator designator of the runway end
     */
    public static SiteNames in(Function<Message, String> words, String designator) {
        return new SiteNames(words.apply(Message.of("site.new.runway", Words.name(designator))),
                words.apply(Message.of("site.new.helipad")), words.apply(Message.of("site.new.glide-path", Words.name(designator))),
                words.apply(Message.of("site.new.battery")), words.apply(Message.of("site.new.supply")),
                words.apply(Message.of("site.new.survey")),
                words.apply(Message.of("site.new.remarks")), words);
    }
}
