// The grammar generator uses Object.groupBy, which Node 20 lacks.
Object.groupBy ??= (items, key) => {
    const groups = Object.create(null);
    let index = 0;
    for (const item of items) {
        (groups[key(item, index++)] ??= []).push(item);
    }
    return groups;
};
