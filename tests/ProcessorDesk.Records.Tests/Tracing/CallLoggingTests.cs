using Xunit;

namespace ProcessorDesk.Records.Tests.Tracing;

public sealed class CallLoggingTests(RecallShop shop) : IClassFixture<RecallShop>
{
    [Fact]
    public void A_call_stands_in_the_trace_it_was_about_and_in_no_other_and_only_an_owner_who_was_told_counts_as_told()
    {
        var about = new TraceStart(TracedKind.Animal, shop.Ann.AnimalId);
        Log(new CallNote(shop.Ben.Id, about, CallOutcome.MessageLeft, "on the machine"));
        Log(new CallNote(shop.Cal.Id, about, CallOutcome.Told, " spoke to Cal "));

        var told = shop.Trace(TracedKind.Animal, shop.Ann.AnimalId).ToTell.ToDictionary(job => job.Owner);

        Assert.Equal([false, false, true, false], told.Values.Select(job => job.IsTold));
        Assert.Equal((CallOutcome.MessageLeft, "on the machine", "SM"), (told["Ben Roth"].Calls.Single().Outcome, told["Ben Roth"].Calls.Single().Words, told["Ben Roth"].Calls.Single().By));
        Assert.Equal("spoke to Cal", told["Cal Sund"].Calls.Single().Words);
        Assert.All(shop.Trace(TracedKind.Batch, shop.Hot).ToTell, job => Assert.Empty(job.Calls));
    }

    [Fact]
    public void A_call_says_what_came_of_it_and_what_was_said()
    {
        var refused = shop.Shop.Try((records, act) => records.LogCall(new CallNote(shop.Dee.Id, new TraceStart(TracedKind.Batch, shop.DeesHot), null, " "), act));

        Assert.Equal(["Outcome", "Words"], refused.Findings.Select(finding => finding.Field));
    }

    private void Log(CallNote note) => shop.Shop.Must((records, act) => records.LogCall(note, act));
}
