namespace ProcessorDesk.Records;

/// <summary>An animal of a job as it leaves it.</summary>
/// <param name="Charged">What of it is charged to the job.</param>
/// <param name="IsInvoiced">A standing invoice charges it.</param>
/// <param name="Parts">What goes back with this job; of a shared animal nothing but with the job it came in with.</param>
public sealed record JobAnimal(ChargedAnimal Charged, bool IsInvoiced, IReadOnlyList<JobPart> Parts);
