using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Invoices;

/// <summary>The account of a job as each of its invoices says it, worked by hand.</summary>
public sealed class JobMoneyTests
{
    private static readonly DateTime s_start = new(2026, 11, 25, 15, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void A_first_invoice_shows_every_payment_until_then()
    {
        var money = new JobMoney([Bill(1, 10, 100.00m)], [Paid(0, 50.00m, isDeposit: true), Paid(5, 20.00m), Paid(11, 30.00m)]);

        var account = money.AccountOn(1);

        Assert.Null(account.Before);
        Assert.Equal([50.00m, 20.00m], account.Since.Select(paid => paid.Amount.Dollars));
        Assert.Equal(100.00m - 50.00m - 20.00m, account.Balance.Dollars);
        Assert.Equal(0m, money.Balance.Dollars);
    }

    [Fact]
    public void Later_ones_are_brought_forward_and_say_the_same_as_adding_all_up()
    {
        var money = new JobMoney(
            [Bill(1, 10, 100.00m), Bill(2, 20, 40.00m), Bill(3, 30, 7.50m)],
            [Paid(0, 50.00m, isDeposit: true), Paid(15, 50.00m), Paid(25, 45.00m), Paid(26, -5.00m), Paid(35, 7.50m)]);

        Assert.Equal((1, 50.00m, 40.00m), Seen(money.AccountOn(2)));                          // 100 − 50; then 50 paid, 40 billed
        Assert.Equal((2, 40.00m, 7.50m), Seen(money.AccountOn(3)));                           // 45 paid, 5 given back, 7.50 billed
        Assert.Equal([45.00m, -5.00m], money.AccountOn(3).Since.Select(paid => paid.Amount.Dollars));
        Assert.Equal(["Payment", "Refund"], money.AccountOn(3).Since.Select(paid => paid.Words));
        Assert.Equal(100.00m + 40.00m + 7.50m - 50.00m - 50.00m - 45.00m + 5.00m, money.AccountOn(3).Balance.Dollars);
    }

    [Fact]
    public void Brought_forward_from_a_credit_where_that_came_last()
    {
        var money = new JobMoney([Bill(1, 10, 100.00m), Bill(2, 20, 40.00m), Bill(3, 30, -40.00m, credits: 2), Bill(4, 40, 44.00m)], [Paid(0, 50.00m, isDeposit: true), Paid(15, 50.00m)]);

        Assert.Equal((3, 0m, 44.00m), Seen(money.AccountOn(4)));
        Assert.Equal([1, 4], money.Standing.Select(bill => bill.Id));
    }

    [Fact]
    public void What_was_billed_and_taken_back_is_as_if_it_had_not_been()
    {
        var money = new JobMoney([Bill(1, 10, 100.00m), Bill(2, 20, -100.00m, credits: 1), Bill(3, 30, 90.00m)], [Paid(0, 50.00m, isDeposit: true)]);

        Assert.Equal((null, 0m, 40.00m), Seen(money.AccountOn(3)));
        Assert.Equal(["Deposit"], money.AccountOn(3).Since.Select(paid => paid.Words));
    }

    [Fact]
    public void Paid_ahead_of_all_bills_the_balance_is_the_owners() =>
        Assert.Equal(-50.00m, new JobMoney([], [Paid(0, 50.00m, isDeposit: true)]).Balance.Dollars);

    private static (int? Before, decimal Forward, decimal Balance) Seen(JobMoney.OnBill account) => (account.Before?.Id, account.Forward.Dollars, account.Balance.Dollars);

    private static JobMoney.Bill Bill(int id, int hour, decimal dollars, int? credits = null) => new(id, 3000 + id, s_start.AddHours(hour), credits, Money.FromDollars(dollars));

    private static JobMoney.Paid Paid(int hour, decimal dollars, bool isDeposit = false) =>
        new(hour, s_start.AddHours(hour), Money.FromDollars(dollars), PaymentMethod.Check, isDeposit, null);
}
