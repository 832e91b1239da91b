package org.rickyard.quantity;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The customary units in which somebody measures, kind by kind; where none is known of, he measures as we do. Tells in
 * which unit he would want a number that we have in ours. Units that are ours but for a power of ten are not among them:
 * who types centimetres is answered in metres.
 */
public final class OwnMeasures {
    /** What is measured, with the customary units it may be measured in. */
    public enum Kind {
        /** Land. */
        AREA(Units.HA, Units.AC),
        /** Water, spray and fuel. */
        LIQUID(Units.L, Units.GAL_UK, Units.GAL_US),
        /** Crop, and what is built or driven over. */
        MASS(Units.T, Units.LONG_TON, Units.SHORT_TON),
        /** Of clamps and fields. */
        LENGTH(Units.M, Units.FT, Units.YD),
        /** In the field. */
        SPEED(Units.KM_PER_H, Units.MPH),
        /** At the nozzle. */
        PRESSURE(Units.BAR, Units.PSI);

        private final Unit ours;
        private final List<Unit> customary;

        Kind(Unit ours, Unit... customary) {
            this.ours = ours;
            this.customary = List.of(customary);
        }

        /** The unit of this kind that we measure in. */
        public Unit ours() {
            return ours;
        }

        /**
         * The customary unit of this kind in which a unit counts: gal(UK) in gal(UK)/ac, long ton in long ton DM/ac;
         * empty if it counts in none.
         */
        public Optional<Unit> in(Unit unit) {
            for (Unit own : customary) {
                if (counts(unit, own) || counts(unit, UnitText.ofDryMatter(own))) {
                    return Optional.of(own);
                }
            }
            return Optional.empty();
        }

        private static boolean counts(Unit unit, Unit own) {
            return unit.isSameScale(own) || DENOMINATORS.stream().anyMatch(below -> unit.isSameScale(own.over(below)));
        }
    }

    private static final List<Unit> DENOMINATORS = List.of(
            Units.AC,
            Units.HA,
            Units.H,
            Units.MIN,
            Units.D,
            Unit.of(
                    "1000 ft2",
                    Units.FT.pow(2).dimension(),
                    Units.FT.pow(2).factor().times(Ratio.of(1000))));

    private static final List<Unit> OURS = List.of(
            Units.HA_PER_H,
            Units.H.over(Units.HA),
            Units.MONEY_UNIT.over(Units.HA),
            Units.L_PER_HA,
            Units.L_PER_MIN,
            Units.L_PER_H,
            Units.T_PER_HA,
            Units.T_PER_H,
            Units.T_DM,
            Units.T_DM_PER_HA,
            Units.M3,
            Units.M3.over(Units.D),
            Units.M.over(Units.WEEK),
            Units.KG.over(Units.HA),
            Units.ONE.over(Units.HA),
            Units.M3.over(Units.HA));

    private final Map<Kind, Unit> units = new EnumMap<>(Kind.class);
    private final String words;

    /** These units; one that is ours tells nothing. */
    public OwnMeasures(Map<Kind, Unit> given) {
        units.putAll(given);
        units.entrySet().removeIf(entry -> entry.getValue().isSameScale(entry.getKey().ours));
        words = units.isEmpty()
                ? "metric"
                : String.join(", ", units.values().stream().map(Unit::symbol).toList());
    }

    /** Whether all is measured as we do. */
    public boolean isOurs() {
        return units.isEmpty();
    }

    /** The units other than ours, kind by kind. */
    public Map<Kind, Unit> units() {
        return Collections.unmodifiableMap(units);
    }

    /** The units, kind by kind: "ac, gal(UK)"; "metric" if all is measured as we do. */
    public String words() {
        return words;
    }

    /** The unit in which a number in one of our units is wanted; empty if in ours. */
    public Optional<Unit> of(Unit ours) {
        if (isOurs() || ours.isSameScale(Units.L_PER_HA) && !units.containsKey(Kind.AREA)) {
            // Nobody counts gallons on a hectare.
            return Optional.empty();
        }
        return Optional.ofNullable(instead(ours)).filter(own -> !own.isSameScale(ours));
    }

    private Unit instead(Unit ours) {
        for (Kind kind : Kind.values()) {
            if (ours.isSameScale(kind.ours)) {
                return the(kind);
            }
        }
        Unit area = the(Kind.AREA);
        Unit liquid = the(Kind.LIQUID);
        Unit mass = the(Kind.MASS);
        Unit dry = UnitText.ofDryMatter(mass);
        // Each in place of one of OURS, in the same order; volumes of earth and silage follow the lengths. Only trees
        // are counted on an area.
        List<Unit> customary = List.of(
                area.over(Units.H),
                Units.H.over(area),
                Units.MONEY_UNIT.over(area),
                liquid.over(area),
                liquid.over(Units.MIN),
                liquid.over(Units.H),
                mass.over(area),
                mass.over(Units.H),
                dry,
                dry.over(area),
                volume(),
                volume().over(Units.D),
                the(Kind.LENGTH).over(Units.WEEK),
                small(),
                Units.ONE.over(area).named("trees/" + area),
                volume().over(area));
        for (int i = 0; i < OURS.size(); i++) {
            if (ours.isSameScale(OURS.get(i))) {
                return customary.get(i);
            }
        }
        return null;
    }

    private Unit volume() {
        Unit length = the(Kind.LENGTH);
        return length.isSameScale(Units.FT) ? Units.FT3 : length.isSameScale(Units.YD) ? Units.YD3 : Units.M3;
    }

    /** What is little on a hectare: pounds an acre are usual where gallons and tons are American, kilograms elsewhere. */
    private Unit small() {
        boolean american =
                the(Kind.LIQUID).isSameScale(Units.GAL_US) || the(Kind.MASS).isSameScale(Units.SHORT_TON);
        return american && the(Kind.AREA).isSameScale(Units.AC) ? Units.LB.over(Units.AC) : Units.KG.over(Units.HA);
    }

    private Unit the(Kind kind) {
        return units.getOrDefault(kind, kind.ours);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OwnMeasures that && words.equals(that.words);
    }

    @Override
    public int hashCode() {
        return words.hashCode();
    }

    @Override
    public String toString() {
        return words;
    }
}
