package org.rickyard;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;

/** The condition that a class has no static field that can be assigned again. */
final class NoSharedState extends ArchCondition<JavaClass> {
    NoSharedState() {
        super("have no static field that can be reassigned");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        for (JavaField field : type.getFields()) {
            boolean reassignable = field.getModifiers().contains(JavaModifier.STATIC)
                    && !field.getModifiers().contains(JavaModifier.FINAL)
                    && !field.getModifiers().contains(JavaModifier.SYNTHETIC);
            if (reassignable) {
                events.add(SimpleConditionEvent.violated(field, field.getFullName() + " is static and not final"));
            }
        }
    }
}
