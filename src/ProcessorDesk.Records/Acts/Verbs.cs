using Microsoft.EntityFrameworkCore;

namespace ProcessorDesk.Records;

/// <summary>
/// The one place that runs verbs: opens the write gate and a transaction, runs the verb with the hand, writes the journal,
/// keeps the form key, saves. A refusal or a fault saves nothing.
/// </summary>
public sealed class Verbs(RecordsContext records, WriteGate gate, TimeProvider clock)
{
    /// <param name="verb">The act in words, for the journal: "take in a job".</param>
    /// <param name="hand">Who acts.</param>
    /// <param name="formKey">The key of the rendered form; null where an act may be repeated at will.</param>
    /// <param name="work">Loads entities from the same context and calls their verbs. May save in the middle to get ids.</param>
    public Outcome Run(string verb, Hand hand, string? formKey, Func<Act, Outcome> work) =>
        gate.Enter(() => RunInside(verb, hand, formKey, work));

    private Outcome RunInside(string verb, Hand hand, string? formKey, Func<Act, Outcome> work)
    {
        records.ChangeTracker.Clear();
        using var transaction = records.Database.BeginTransaction();
        if (formKey is not null && FirstResult(formKey) is { } first)
            return Outcome.Repeat(first);
        var act = new Act(records, clock.GetUtcNow().UtcDateTime, hand);
        using var journal = new Journal(records);
        Outcome outcome;
        try
        {
            outcome = work(act);
            if (!outcome.IsDone)
                return Undone(outcome);
            if (formKey is not null)
                records.FormKeys.Add(new FormKey(formKey, outcome.Result, act.Now));
            records.SaveChanges();
        }
        catch (DbUpdateConcurrencyException)
        {
            return Undone(Outcome.Stale());
        }
        catch
        {
            records.ChangeTracker.Clear();
            throw;
        }

        journal.Write(verb, act);
        transaction.Commit();
        return outcome;
    }

    private Outcome Undone(Outcome outcome)
    {
        records.ChangeTracker.Clear();
        return outcome;
    }

    private string? FirstResult(string formKey) =>
        records.FormKeys.AsNoTracking().Where(key => key.Key == formKey).Select(key => key.Result).SingleOrDefault();
}
