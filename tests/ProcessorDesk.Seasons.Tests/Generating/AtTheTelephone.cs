using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Now and then a batch is asked about, and its owners are called.</summary>
internal static class AtTheTelephone
{
    /// <summary>One batch in two hundred; of its owners every one, the second time with an answer.</summary>
    public static void Expect(Season season, Batch batch, IEnumerable<Job> jobs)
    {
        if (batch.Number % 200 != 10)
            return;
        foreach (var job in jobs)
        {
            season.Plan(season.Now.AddHours(20), "log a call", StaffRole.Manager, "Office", () => Call(CallOutcome.NoAnswer, "Rang, nobody there"));
            season.Plan(season.Now.AddHours(24), "log a call", StaffRole.Manager, "Office", () => Call(CallOutcome.Told, "Told of the reading that was missing"));

            void Call(CallOutcome outcome, string words) =>
                season.Add(new OwnerCall(job.Id, new TraceStart(TracedKind.Batch, batch.Id), outcome, words, season.Now, season.Hand.Id));
        }
    }
}
