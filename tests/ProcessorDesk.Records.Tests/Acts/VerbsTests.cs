using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Acts;

public sealed class VerbsTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_second_post_of_a_form_leads_to_the_first_result_and_changes_nothing()
    {
        using var records = shop.Open();
        var first = TakeIn(records, "form-1");
        var before = Snapshot();

        var second = TakeIn(records, "form-1");

        Assert.True(first is { IsDone: true, IsRepeat: false });
        Assert.True(second is { IsDone: true, IsRepeat: true });
        Assert.Equal(first.Result, second.Result);
        Assert.Equal(before, Snapshot());
        Assert.False(TakeIn(records, "form-2").IsRepeat);
    }

    [Fact]
    public void Posts_of_one_form_that_race_take_in_one_job()
    {
        var before = Snapshot().Jobs;
        using var start = new Barrier(6);

        var outcomes = Racers(6, _ =>
        {
            using var records = shop.Open();
            start.SignalAndWait();
            return TakeIn(records, "raced");
        });

        Assert.Single(outcomes.Select(outcome => outcome.Result).Distinct());
        Assert.Single(outcomes, outcome => !outcome.IsRepeat);
        Assert.Equal(before + 1, Snapshot().Jobs);
    }

    [Fact]
    public void A_refusal_saves_nothing_though_the_verb_saved_in_the_middle()
    {
        var before = Snapshot();
        using var records = shop.Open();

        var outcome = shop.VerbsOn(records).Run("take in a job", shop.Manager, "refused", act =>
        {
            var job = Sample.Job(records, act);
            act.NewTicket(TicketKind.Claim, job.Id);
            return Outcome.Refused(new Finding("Tag", "This shop takes no animal without a tag."));
        });

        Assert.False(outcome.IsDone);
        Assert.Equal(before, Snapshot());
        Assert.Empty(records.ChangeTracker.Entries());
        Assert.False(TakeIn(records, "refused").IsRepeat);
    }

    [Fact]
    public void A_fault_in_the_middle_saves_nothing_and_leaves_the_gate_open()
    {
        var before = Snapshot();
        using var records = shop.Open();

        Assert.Throws<InvalidTimeZoneException>(() => shop.VerbsOn(records).Run("take in a job", shop.Manager, "fault", act =>
        {
            Sample.Deer(records, Sample.Job(records, act), act);
            throw new InvalidTimeZoneException();
        }));

        Assert.Equal(before, Snapshot());
        Assert.Empty(records.ChangeTracker.Entries());
        Assert.True(TakeIn(records, "fault") is { IsDone: true, IsRepeat: false });
    }

    [Fact]
    public void What_the_file_refuses_at_the_last_save_undoes_the_whole_act()
    {
        var before = Snapshot();
        using var records = shop.Open();

        Assert.Throws<DbUpdateException>(() => shop.VerbsOn(records).Run("add a hand", shop.Manager, null, act =>
        {
            Sample.Job(records, act);
            records.Staff.Add(new Staff("Second Hand", "SM", StaffRole.Cutter));
            return Outcome.Done();
        }));

        Assert.Equal(before, Snapshot());
    }

    [Fact]
    public void What_another_saved_in_between_makes_the_act_stale()
    {
        var jobId = shop.Do((records, act) => Sample.Job(records, act).Id);
        using var records = shop.Open();

        var outcome = shop.VerbsOn(records).Run("arrange", shop.Manager, null, act =>
        {
            var job = records.Jobs.Single(one => one.Id == jobId);
            records.Database.ExecuteSql($"UPDATE Jobs SET Version = Version + 1 WHERE Id = {jobId}");
            job.Arrange(null, Pooling.Pooled, PackWrap.Vacuum, false, null);
            return Outcome.Done();
        });

        Assert.True(outcome is { IsDone: false, IsStale: true });
        Assert.Equal(["0"], shop.Column($"SELECT Version FROM Jobs WHERE Id = {jobId}"));
    }

    [Fact]
    public void Numbers_have_no_gaps_though_eight_write_at_once_and_every_third_is_refused()
    {
        var firstNew = 1 + int.Parse(shop.Column("SELECT COALESCE(MAX(Number), 1000) FROM Jobs")[0]!, System.Globalization.CultureInfo.InvariantCulture);
        const int writers = 8, each = 12;

        var outcomes = Racers(writers, _ => Enumerable.Range(0, each).Select(turn =>
        {
            using var records = shop.Open();
            return shop.VerbsOn(records).Run("take in a job", shop.Manager, null, act =>
            {
                var job = Sample.Job(records, act);
                act.NewTicket(TicketKind.Claim, job.Id);
                records.Invoices.Add(new Invoice(act.NextInvoiceNumber(), job.Id, act.Now, act.Hand.Id, new("", "", ""), [], "{}"));
                records.SaveChanges();
                return turn % 3 == 0 ? Outcome.Refused(new Finding("", "No.")) : Outcome.Done();
            });
        }).ToList()).SelectMany(one => one).ToList();

        var done = outcomes.Count(outcome => outcome.IsDone);
        Assert.Equal(writers * each * 2 / 3, done);
        using var records = shop.Open();
        var jobs = records.Jobs.Where(job => job.Number >= firstNew).Select(job => job.Number).OrderBy(number => number).ToList();
        Assert.Equal(Enumerable.Range(firstNew, done), jobs);
        Assert.Equal(Enumerable.Range(1, records.Invoices.Count()), records.Invoices.Select(one => one.Number).OrderBy(number => number));
        var tickets = records.Tickets.OrderBy(ticket => ticket.Number).AsEnumerable().Select(ticket => ticket.Code).ToList();
        Assert.Equal(tickets.Skip(1), tickets.SkipLast(1).Select(code => code.Next()));
        Assert.Null(records.FirstBroken());
    }

    private Outcome TakeIn(RecordsContext records, string formKey) =>
        shop.VerbsOn(records).Run("take in a job", shop.Manager, formKey, act => Outcome.Done(Sample.Job(records, act).Id));

    private (int Jobs, string Others) Snapshot() => (
        int.Parse(shop.Column("SELECT COUNT(*) FROM Jobs")[0]!, System.Globalization.CultureInfo.InvariantCulture),
        string.Join('/', shop.Column(
            """
            SELECT COUNT(*) FROM Owners UNION ALL SELECT COUNT(*) FROM Animals UNION ALL SELECT COUNT(*) FROM Tickets
            UNION ALL SELECT COUNT(*) FROM FormKeys UNION ALL SELECT COUNT(*) FROM Journal UNION ALL SELECT SUM(Next) FROM Counters
            """)));

    private static List<T> Racers<T>(int count, Func<int, T> run)
    {
        var results = new T[count];
        var threads = Enumerable.Range(0, count).Select(index => new Thread(() => results[index] = run(index))).ToList();
        threads.ForEach(thread => thread.Start());
        threads.ForEach(thread => thread.Join());
        return [.. results];
    }
}
