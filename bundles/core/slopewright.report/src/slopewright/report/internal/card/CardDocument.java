package slopewright.report.internal.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.report.CardPaper;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.report.internal.template.PageFrame;

/**
 * Puts the set-up card of a portable unit together as XHTML: the steps in large type with a picture each, and the details behind them. A
 * card that is not for use has the reasons in their place, and no step that could be followed.
 */
public final class CardDocument {
    /** So many reasons stand in the largest type. */
    private static final int FEW_REASONS = 5;

    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;
    private final Optional<PortableSetUp> found;
    private final LocalDate date;
    private final String label;
    private final List<Message> reasons;
    private final ReportOptions options;
    private final CardPaper paper;

    /**
     * Starts a card.
     *
     * @param aid     the evaluation of the aid
     * @param found   its set-up; empty where it cannot be worked out, which stands against its use
     * @param date    the day of the set-up
     * @param reasons what stands against its use
     * @param options date, template and language
     * @param paper   the paper
     */
    public CardDocument(AidEvaluation aid, Optional<PortableSetUp> found, LocalDate date, List<Message> reasons,
            ReportOptions options, CardPaper paper) {
        this.aid = aid;
        this.found = found;
        this.date = date;
        this.reasons = List.copyOf(reasons);
        this.options = options;
        this.paper = paper;
        words = new ReportWords(options.renderer());
        label = words.path(aid.aid());
        html = new Html(words);
    }

    /** Returns its title. */
    public String title() {
        return words.say("card.title-of", Words.name(label));
    }

    /**
     * Writes the card.
     *
     * @param pictures takes its drawings
     * @return the document
     * @throws ReportException where the template holds what it may not hold
     */
    public String write(Pictures pictures) throws ReportException {
        if (reasons.isEmpty()) {
            title("h1");
            new FieldSteps(html, aid, found.orElseThrow(), paper).write(pictures);
        } else {
            boolean few = reasons.size() <= FEW_REASONS;
            html.open("div class=\"locked stop " + (few ? "few" : "many") + "\"").element("p class=\"stop-word\"",
                    words.say("card.not-for-use")).list(words.render(reasons)).close("div");
            title("h1");
        }
        PageFrame.cautions(html);
        if (paper.hasDetails() && found.isPresent()) {
            new CardDetails(html, aid, found.get()).write(pictures);
        }
        return new PageFrame(aid.project(), options, aid.rules(), paper.key()).document(title(), style(), html.toString());
    }

    private void title(String element) {
        html.element(element, words.say("card.title")).element("p class=\"big\"", words.say("card.label", Words.name(label),
                Words.name(date.toString())));
    }

    private String style() {
        return paper == CardPaper.A5 ? "card pocket" : paper == CardPaper.LETTER ? "card short" : "card";
    }
}
