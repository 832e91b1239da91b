package org.rickyard.plan.table;

import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.Products;
import org.rickyard.lists.Stocks;

/** The part a list row plays in a result row. */
public enum Role {
    /** The field worked. */
    FIELD(Fields.LIST),
    /** The machine at work. */
    MACHINE(Machines.LIST),
    /** The job being done. */
    JOB(Jobs.LIST),
    /** The job row that names this very product. */
    DOSED_JOB(Jobs.LIST),
    /** The job row by which a product goes onto a field, which tells its own days. */
    APPLIED_JOB(Jobs.LIST),
    /** Of the job rows of one spraying of a field the one that tells when the crop is harvested. */
    HARVEST_JOB(Jobs.LIST),
    /** The cut of the field. */
    CUT(Cuts.LIST),
    /** The product in the tank. */
    PRODUCT(Products.LIST),
    /** The product, where its dose counts the active ingredient in it. */
    OF_ACTIVE(Products.LIST),
    /** The product, where its dose counts the nitrogen in it. */
    OF_NITROGEN(Products.LIST),
    /** The product, where its dose counts the phosphate in it. */
    OF_PHOSPHATE(Products.LIST),
    /** The product, where its dose counts the potash in it. */
    OF_POTASH(Products.LIST),
    /** The job row that names the product, where its dose counts the active ingredient in it. */
    JOB_OF_ACTIVE(Jobs.LIST),
    /** The job row that names the product, where its dose counts the nitrogen in it. */
    JOB_OF_NITROGEN(Jobs.LIST),
    /** The job row that names the product, where its dose counts the phosphate in it. */
    JOB_OF_PHOSPHATE(Jobs.LIST),
    /** The job row that names the product, where its dose counts the potash in it. */
    JOB_OF_POTASH(Jobs.LIST),
    /** The line of a tank mix. */
    MIX(Mixes.LIST),
    /** The tractor that pulls or drives the machine. */
    TRACTOR(Machines.LIST),
    /** The machine that leads a gang. */
    LEAD(Machines.LIST),
    /** The price of labour. */
    WAGE(Assumptions.LIST),
    /** The price of fuel. */
    FUEL_PRICE(Assumptions.LIST),
    /** The rate of interest. */
    INTEREST(Assumptions.LIST),
    /** The rate of insurance and housing. */
    INSURANCE(Assumptions.LIST),
    /** The nozzle caught in a test. */
    NOZZLE_TEST(NozzleTest.LIST),
    /** The clamp. */
    CLAMP(Clamps.LIST),
    /** The store of feed. */
    STOCK(Stocks.LIST),
    /** The group of stock that is fed. */
    HERD(Herds.LIST);

    private final ListSpec list;

    Role(ListSpec list) {
        this.list = list;
    }

    /** The list whose rows play this part. */
    public ListSpec list() {
        return list;
    }
}
