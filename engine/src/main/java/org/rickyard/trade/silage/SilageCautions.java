package org.rickyard.trade.silage;

import java.util.List;

/** The cautions that hold for whole sheets of silage. None is a clearance. Common practice unless a body is named. */
public final class SilageCautions {
    private SilageCautions() {}

    /** Heights and shapes. */
    public static final List<String> HEIGHTS = List.of(
            "No height here is a permission: the wall's loading notice, its installer and local code decide. Walls, and"
                    + " lines overhead, are checked with the height on the day, not the settled one.",
            "Line heights are at least 5.2 m (to 33 kV), 6.7 m (132), 7.0 m (275) and 7.3 m (400): HSE AIS8. Poles may"
                    + " carry lower gear, a raised loader or body reaches above. Ask the network operator first.",
            "On top: at least three tyre widths of working width, sides under 45 degrees, no turning on slopes. Keep"
                    + " three face heights away from a face; sample from a grab-load; never undercut.");

    /** Gas, covering and additives. */
    public static final List<String> COVERING = List.of(
            "Silage gas (nitrogen dioxide) forms within hours, peaks in days 1-5, may be invisible and sinks to low places;"
                    + " harm may show only 12 h later (Alberta Agdex 726-1). Published keep-out times are 14, 21 and 28-42"
                    + " days; take the longest. Nobody under the sheet.",
            "Sheeting and taking off tyres: falls from the edge kill. Work in daylight, not alone, back from the edge."
                    + " Acids used as additives burn: label, goggles, gloves, water at hand.");

    /** Effluent. */
    public static final List<String> EFFLUENT = List.of(
            "Silage effluent run into a slurry store gives off hydrogen sulphide, lethal to people and stock: never"
                    + " into a store under or near a building. Inspect tanks from outside; never enter one.",
            "Effluent must not reach water. These are the texts held, not legal advice: check the current law and ask"
                    + " the regulator. Rain and yard water come on top of every figure.");

    /** Feeding. */
    public static final List<String> FEEDING = List.of(
            "Budgets are tonnes of dry matter after losses: analyse the feed, weigh the loads, and look again at half"
                    + " time. Rations are set by a nutritionist, not by this sheet.",
            "Keep back from the face; bales roll on slopes and stacks slip: chock them, and keep children away.");

    /** Bales. */
    public static final List<String> BALES = List.of(
            "Bales are not stored or opened within 10 m of water (Scotland GBR 29; Wales WSI 2021/77; England 2010"
                    + " amendment). Ireland, as reported: two high at most without effluent collection, 20 m from water.",
            "Check the current law and ask the regulator. Bales roll on slopes and stacks slip: chock them, never stand"
                    + " below, and keep children away.");

    /** What stands on every clamp card, in words for whoever is on the roller. */
    public static final List<String> CARD = List.of(
            "Edges and slopes: machines overturn. On top at least three tyre widths of working width, sides under 45"
                    + " degrees (HSA and FCI 2021); no turning on slopes; wet grass slips. A rail shows"
                    + " the edge and stops no vehicle; barriers where a machine can drop 600 mm (HSENI).",
            "Power lines: look up before you tip, lift or stand on top. Lines may hang at 5.2 m (to 33 kV), 6.7 m (132),"
                    + " 7.0 m (275), 7.3 m (400): HSE AIS8; gear on poles lower. The network operator decides.",
            "Walls and faces: never above the wall's loading notice; never undercut a face; keep three face heights away.",
            "Gas kills, from the first hours and for weeks, seen or not: stay out of pits and low rooms; nobody under the"
                    + " sheet. No effluent into a slurry store.",
            "Sheeting: falls from the edge kill; by daylight, not alone. Children and bystanders away at silage time.");
}
