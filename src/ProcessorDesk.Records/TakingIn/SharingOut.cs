using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Divides one animal among jobs.</summary>
public static class SharingOut
{
    /// <summary>Changes the fractions, and opens another owner's job for a share; its result is that job's id, or empty where none was opened.</summary>
    /// <param name="version">The animal as the person saw it.</param>
    /// <param name="fractions">Every share there is, with its fraction now.</param>
    /// <param name="another">Whose job is opened, and for what fraction; null for none.</param>
    public static Outcome ShareOut(
        this RecordsContext records,
        int animalId,
        int? version,
        IReadOnlyList<(int JobId, Ratio Fraction)> fractions,
        (TakenOwner Owner, Ratio Fraction)? another,
        DateOnly today,
        Act act)
    {
        var animal = records.Animals.Include(one => one.Shares.Where(share => share.AnimalId == animalId)).ThenInclude(share => share.Job).Single(one => one.Id == animalId);
        if (animal.Version != version || fractions.Count != animal.Shares.Count || animal.Shares.Any(share => fractions.All(one => one.JobId != share.JobId)))
            return Outcome.Stale();
        if (animal.Divide(fractions) is { } refusal)
            return Outcome.Refused(refusal);
        if (another is not { } other)
            return Outcome.Done();
        var (job, reason) = records.StartJob(other.Owner, today, act);
        if (job is null)
            return Outcome.Refused(reason!);
        if (animal.ShareWith(job, other.Fraction, Share.PortionOf(other.Fraction)) is { } past)
            return Outcome.Refused(past);
        records.SaveChanges();
        act.NewTicket(TicketKind.Claim, job.Id);
        return Outcome.Done(job.Id);
    }
}
