package slopewright.exchange;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.siting.Siting;

/**
 * An approach aid with what a file or schedule on it starts from. Whoever has the rule set at hand fills it in; what is not known stays
 * empty and is written as not known, never as zero.
 *
 * @param aid                     the aid
 * @param host                    its runway end or approach direction
 * @param familyName              what its family is called, for people
 * @param ruleSetName             what the rule set is called, for people
 * @param siting                  what the units give as they stand; empty where they give nothing
 * @param reason                  why there is no siting; empty where there is one
 * @param settingToleranceMinutes how far a unit may be from its setting, minutes of arc; empty where the rule set says nothing
 * @param toleranceSource         where that comes from, with its provenance; empty where there is none
 * @param variationDeg            magnetic variation, decimal degrees, east positive; empty where it is not known
 * @param variationSource         where that comes from, and the day it holds for; empty where there is none
 */
public record LaidAid(ApproachAid aid, ApproachHost host, String familyName, String ruleSetName, Optional<Siting> siting, String reason,
        OptionalDouble settingToleranceMinutes, String toleranceSource, OptionalDouble variationDeg, String variationSource) {

    /** Refuses missing parts. */
    public LaidAid {
        Objects.requireNonNull(aid);
        Objects.requireNonNull(host);
        Objects.requireNonNull(familyName);
        Objects.requireNonNull(ruleSetName);
        Objects.requireNonNull(siting);
        Objects.requireNonNull(settingToleranceMinutes);
        Objects.requireNonNull(variationDeg);
    }
}
