namespace ProcessorDesk.Records;

/// <summary>A hand in the shop. Retired, never deleted: facts point at it.</summary>
public sealed class Staff : IVersioned
{
    private Staff()
    {
    }

    public Staff(string name, string initials, StaffRole role) => Describe(name, initials, role);

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    public string Initials { get; private set; } = "";

    public StaffRole Role { get; private set; }

    /// <summary>A salted hash of the PIN; null where none was set, and then nobody signs in as this hand.</summary>
    public string? PinHash { get; private set; }

    public DateTime? RetiredAt { get; private set; }

    public int Version { get; private set; }

    public void Describe(string name, string initials, StaffRole role)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentException.ThrowIfNullOrWhiteSpace(initials);
        Name = name.Trim();
        Initials = initials.Trim().ToUpperInvariant();
        Role = role;
    }

    public void SetPin(string hash) => PinHash = hash;

    public void Retire(DateTime at) => RetiredAt ??= at;

    public void BringBack() => RetiredAt = null;
}
