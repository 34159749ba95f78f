package changeover.web.office;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the tax report, and of choosing a period. */
@MessageBundle("taxreport")
public interface TaxReportWords {

    @Message("Tax report")
    String heading();

    @Message("First day")
    String from();

    @Message("Last day")
    String until();

    @Message("Show these days")
    String show();

    @Message("Take as CSV")
    String file();

    @Message("Tax")
    String tax();

    @Message("Taxable")
    String base();

    @Message("Invoiced")
    String invoiced();

    @Message("Given back")
    String credited();

    @Message("Net")
    String net();

    @Message("On payments")
    String paid();

    @Message("Given up")
    String given_up();

    @Message("All together")
    String sum();

    @Message("No tax was charged, given back or paid in these days.")
    String nothing();

    @Message("Invoiced")
    String sold();

    @Message("Given back")
    String given_back();

    @Message("Net")
    String remains();

    @Message("Sales before tax, taxed or not")
    String sales();

    @Message(
            "On payments: of an invoice that is paid in part, each tax is paid in the same part. Money that went back is taken off on the day it went. Given up: its part of debts that were written off.")
    String how();

    @Message("Invoices that charged it")
    String list_invoiced();

    @Message("Credit notes that gave it back")
    String list_credited();

    @Message("Invoices that charged it and credit notes that gave it back")
    String list_net();

    @Message("Invoices on which it was paid in these days")
    String list_paid();

    @Message("Invoices on which it was given up or taken back in these days")
    String list_given_up();

    @Message("All taxes")
    String all_taxes();

    @Message("No document stands behind this figure.")
    String none();
}
