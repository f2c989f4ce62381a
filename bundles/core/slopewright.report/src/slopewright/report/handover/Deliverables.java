package slopewright.report.handover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import java.util.Set;

import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/** The list of all files that a project can be handed over as, from the kinds that are registered as services. */
public final class Deliverables {

    private static final List<Deliverable> KINDS = ServiceLoader.load(Deliverable.class, Deliverables.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get).sorted(Comparator.comparingInt(Deliverable::order)).toList();

    private final List<HandoverFile> all = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    private Deliverables() {
    }

    /** Returns the kinds of files in their order. */
    public static List<Deliverable> kinds() {
        return KINDS;
    }

    /**
     * Lists what a project can be handed over as.
     *
     * @param project the project
     * @return one entry a file, those about the whole project first
     */
    public static List<HandoverFile> of(Project project) {
        Deliverables list = new Deliverables();
        KINDS.forEach(kind -> kind.about(project).forEach(list::add));
        Projects.aids(project).forEach(aid -> KINDS.forEach(kind -> kind.about(aid).forEach(offer -> list.add(offer, aid))));
        return List.copyOf(list.all);
    }

    private void add(Deliverable.Offer offer) {
        String fileName = offer.stem() + "." + offer.extension();
        names.add(fileName);
        all.add(new HandoverFile(offer.kind() + "-" + offer.extension(), offer.kind(), offer.label(), Words.name(""), fileName,
                offer.usual(),
                offer.writer(), offer.picture()));
    }

    private void add(Deliverable.Offer offer, ApproachAid aid) {
        String label = Projects.label(aid).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        String stem = (label.isEmpty() ? aid.getId() : label) + "-" + offer.stem();
        String free = names.contains(stem + "." + offer.extension()) ? stem + "-" + aid.getId() : stem;
        String fileName = free + "." + offer.extension();
        names.add(fileName);
        all.add(new HandoverFile(offer.kind() + "-" + offer.extension() + " " + aid.getId(), offer.kind(), offer.label(),
                ElementNames.way(aid), fileName, offer.usual(), offer.writer(), offer.picture()));
    }
}
