package org.rickyard.plan.join;

import java.util.Arrays;

/**
 * Numbers groups of whole numbers from 0 in the order they are met; the same group has the same number. It makes no object
 * for a group, so that a hundred thousand of them can be told apart at little cost.
 */
public final class TupleNumbers {
    private final int width;
    private int[] members;
    /** One more than the number of the group that took the slot; 0 where none has. */
    private int[] slots = new int[64];

    private int count;

    /** For groups of so many. */
    public TupleNumbers(int width) {
        this.width = width;
        this.members = new int[16 * width];
    }

    /** How many groups were met. */
    int count() {
        return count;
    }

    /** The number of a group, which is {@link #count} before the call if it is a new one. */
    public int of(int... group) {
        int slot = slotOf(group);
        if (slots[slot] > 0) {
            return slots[slot] - 1;
        }
        if ((count + 1) * width > members.length) {
            members = Arrays.copyOf(members, 2 * members.length);
        }
        System.arraycopy(group, 0, members, count * width, width);
        slots[slot] = ++count;
        if (2 * count > slots.length) {
            spread();
        }
        return count - 1;
    }

    /** The number of a group; -1 if it was never met. */
    public int find(int... group) {
        return slots[slotOf(group)] - 1;
    }

    /** The slot that the group has, or would take. */
    private int slotOf(int[] group) {
        int slot = slot(group, 0);
        while (slots[slot] > 0) {
            int known = slots[slot] - 1;
            if (Arrays.equals(members, known * width, (known + 1) * width, group, 0, width)) {
                break;
            }
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }

    private int slot(int[] from, int start) {
        int hash = 0;
        for (int i = start; i < start + width; i++) {
            hash = (hash ^ from[i]) * 0x9E3779B1;
            hash ^= hash >>> 15;
        }
        return hash & slots.length - 1;
    }

    private void spread() {
        slots = new int[2 * slots.length];
        for (int number = 0; number < count; number++) {
            int slot = slot(members, number * width);
            while (slots[slot] > 0) {
                slot = slot + 1 & slots.length - 1;
            }
            slots[slot] = number + 1;
        }
    }
}
