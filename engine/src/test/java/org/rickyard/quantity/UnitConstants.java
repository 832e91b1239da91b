package org.rickyard.quantity;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Map;
import java.util.TreeMap;

/** Every unit that {@link Units} declares, by the name of its constant, so that a new one cannot escape the oracles. */
final class UnitConstants {
    private UnitConstants() {}

    static Map<String, Unit> all() {
        Map<String, Unit> units = new TreeMap<>();
        for (Field field : Units.class.getFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == Unit.class) {
                try {
                    units.put(field.getName(), (Unit) field.get(null));
                } catch (IllegalAccessException e) {
                    throw new AssertionError(e);
                }
            }
        }
        return units;
    }

    static boolean isProportional(Unit unit) {
        return unit.offset().numerator().signum() == 0;
    }
}
